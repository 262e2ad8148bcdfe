package bitterend.finding;

import java.util.regex.Pattern;

/** A word of a command as it is printed to be typed or pasted: in quotes where a command line would take it apart. */
public final class CommandWord {
    private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}_./,:@%+=-]+");
    private static final Pattern WITHIN_DOUBLE_QUOTES = Pattern.compile("[^\"$`\\\\!]*");

    private CommandWord() {}

    /** The word as it is typed. Double quotes do in every command line; what they would not keep stands in single ones. */
    public static String of(String word) {
        if (PLAIN.matcher(word).matches()) {
            return word;
        }
        return WITHIN_DOUBLE_QUOTES.matcher(word).matches() ? '"' + word + '"' : "'" + word.replace("'", "'\\''") + "'";
    }
}
