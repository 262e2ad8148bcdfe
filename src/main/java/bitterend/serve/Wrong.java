package bitterend.serve;

import bitterend.stock.LedgerException;
import bitterend.work.Booking;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** What went wrong, in a sentence for who stands before the page: never a trace, never a path of a request. */
final class Wrong {
    /** What a sentence says to type, and what it is on a page. */
    private static final Map<Pattern, String> TYPED = new LinkedHashMap<>();

    static {
        TYPED.put(Pattern.compile("[.;] [Ii]f (it|that) is so, say (it with )?--sure"), "");
        TYPED.put(Pattern.compile(", say so with --sure"), ", it may be booked");
        TYPED.put(Pattern.compile("say it with --sure"), "say so in the form");
        TYPED.put(
                Pattern.compile("[Pp]ost what was cut with --piece, or give what came out with --measured"),
                "Book piece by piece what came out");
        TYPED.put(Pattern.compile("post what was cut with --piece, and plan the rest again"), "plan the rest again");
        TYPED.put(Pattern.compile("book that first; how: bitterend stock count --help"), "count it on the rack first");
        TYPED.put(Pattern.compile("; quote back takes that back first"), "; take that step back first");
        TYPED.put(Pattern.compile("; quote back takes that back"), "; take that step back first");
        TYPED.put(Pattern.compile("; quote revise draws it up anew"), "; revise it");
        TYPED.put(Pattern.compile("; quote list shows those there are"), "");
        TYPED.put(Pattern.compile("; quote accept notes it, --order names one"), "");
        TYPED.put(
                Pattern.compile(
                        "draw it up anew with quote revise, or say who accepts it: quote revise with --accept NAME"),
                "revise it, or say there who accepts it");
        TYPED.put(Pattern.compile("; see bitterend stock [^;.]*"), "");
        TYPED.put(Pattern.compile("; what is: bitterend stock arrive SHOP"), "");
        TYPED.put(
                Pattern.compile("receive one of them under stock receive"), "book one of them as a reel that came in");
    }

    private Wrong() {}

    static String sentence(Throwable fault) {
        if (fault instanceof LedgerException ledger) {
            return ledger.sentence();
        }
        if (fault instanceof UncheckedIOException || fault instanceof IOException) {
            return "A file of the shop could not be read or written. Nothing was booked.";
        }
        if (fault instanceof OutOfMemoryError) {
            return "There is not enough memory for this. Nothing was booked.";
        }
        return "This is a fault in the program, not in your files. Nothing was booked.";
    }

    /** Whether it is a fault of the program itself, and nothing of files, the ledger or the machine. */
    static boolean isOfTheProgram(Throwable fault) {
        return !(fault instanceof LedgerException
                || fault instanceof UncheckedIOException
                || fault instanceof IOException
                || fault instanceof OutOfMemoryError);
    }

    static String sentence(Booking.Refused refused) {
        return onPage(refused.why()) + ". Nothing was booked.";
    }

    /** Without what is typed at the command line: a page has its own ways for that. */
    static String onPage(String words) {
        String said = words;
        for (Map.Entry<Pattern, String> each : TYPED.entrySet()) {
            said = each.getKey().matcher(said).replaceAll(each.getValue());
        }
        return said;
    }
}
