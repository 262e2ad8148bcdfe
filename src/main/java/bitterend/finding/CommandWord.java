package bitterend.finding;

import java.io.File;
import java.util.regex.Pattern;

/** A word of a command as it is printed to be typed or pasted: in quotes where a command line would take it apart. */
public final class CommandWord {
    private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}_./,:@%+=-]+");
    private static final Pattern WITHIN_DOUBLE_QUOTES = Pattern.compile("[^\"$`\\\\!]*");

    private CommandWord() {}

    /** The word as it is typed on this machine. */
    public static String of(String word) {
        return of(word, File.separatorChar == '\\');
    }

    /**
     * Double quotes do in every command line; what they would not keep is in single ones. On Windows no command line but one
     * knows single quotes, and a backslash is a letter there.
     */
    static String of(String word, boolean windows) {
        if (PLAIN.matcher(windows ? word.replace('\\', '/') : word).matches()) {
            return word;
        }
        return windows || WITHIN_DOUBLE_QUOTES.matcher(word).matches()
                ? '"' + word + '"'
                : "'" + word.replace("'", "'\\''") + "'";
    }
}
