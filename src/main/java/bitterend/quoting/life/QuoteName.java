package bitterend.quoting.life;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a kept quote is called.
 *
 * @param number its number, such as {@code Q-2601}; without a slash
 * @param revision from 1 on
 */
public record QuoteName(String number, int revision) {
    private static final Pattern WRITTEN = Pattern.compile("([^/]+)/([1-9][0-9]{0,3})");

    public QuoteName {
        if (number.isBlank() || number.indexOf('/') >= 0 || revision < 1) {
            throw new IllegalArgumentException("quote " + number + ", revision " + revision);
        }
    }

    /** The name as {@link #toString} writes it; nothing for any other text. */
    public static Optional<QuoteName> find(String text) {
        Matcher parts = WRITTEN.matcher(text);
        return parts.matches()
                ? Optional.of(new QuoteName(parts.group(1), Integer.parseInt(parts.group(2))))
                : Optional.empty();
    }

    /** For people: the first revision needs no word. */
    public String words() {
        return revision == 1 ? number : number + ", revision " + revision;
    }

    /** {@code Q-2601/2}: for files. */
    @Override
    public String toString() {
        return number + "/" + revision;
    }
}
