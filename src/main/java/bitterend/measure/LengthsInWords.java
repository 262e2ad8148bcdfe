package bitterend.measure;

import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths that stand in words as somebody wrote them, such as {@code bury-eye length 14 in pin 4 in / whipped}. */
public final class LengthsInWords {
    /** One number and its unit or several, each behind a blank or an opening bracket. */
    private static final Pattern LENGTH = Pattern.compile("(?<![^ (])AMOUNT(?: ?AMOUNT)*(?![^ ,;:.)/])"
            .replace(
                    "AMOUNT",
                    "(?:[0-9]+[ -])?[0-9]+(?:[./][0-9]+)? ?(?i:" + String.join("|", LengthUnit.words()) + ")"));

    private LengthsInWords() {}

    /** The words as somebody wrote them, every length of them kept as one. */
    public static Sentence sentence(String words) {
        Sentence read = Sentence.NONE;
        int from = 0;
        Matcher found = LENGTH.matcher(words);
        while (found.find()) {
            Optional<Written> length = Written.parse(found.group()).value();
            if (length.isPresent()) {
                read = read.and(words.substring(from, found.start())).inWords(length.get(), found.group());
                from = found.end();
            }
        }
        return read.and(words.substring(from));
    }

    /** The words with every length of them printed in another way. */
    public static String replaced(String words, Function<Written, String> print) {
        return LENGTH.matcher(words)
                .replaceAll(found -> Matcher.quoteReplacement(
                        Written.parse(found.group()).value().map(print).orElse(found.group())));
    }

    /** The words with every length in millimetres: what is the same however its lengths were written. */
    public static String exact(String words) {
        return replaced(words, length -> LengthText.exact(length.exact()));
    }
}
