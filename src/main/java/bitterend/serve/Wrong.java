package bitterend.serve;

import bitterend.stock.LedgerException;
import bitterend.work.Booking;
import java.io.IOException;
import java.io.UncheckedIOException;

/** What went wrong, in a sentence for who stands before the page: never a trace, never a path of a request. */
final class Wrong {
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

    static String sentence(Booking.Refused refused) {
        return refused.why() + ". Nothing was booked.";
    }
}
