package bitterend.finding;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Finds ids that a person, a file system or a search would take for one another: those that differ only by case, by forms
 * of one letter (full width, raised), by letters of another script that look alike, or by signs that file names do not bear.
 */
public final class LookAlike {
    /** Letters of Greek and Cyrillic, and digits, beside the Latin letter they are taken for. From memory, no source. */
    private static final Map<Character, Character> TWINS = twins(
            "\u0430a \u0432b \u0435e \u0456i \u0458j \u043Ak \u043Cm \u043Dh \u043Eo \u0440p \u0441c \u0442t \u0443y \u0445x"
                    + " \u0455s \u03B1a \u03B2b \u03B5e \u03B6z \u03B7h \u03B9i \u03BAk \u03BCm \u03BDn \u03BFo \u03C1p \u03C4t"
                    + " \u03C5y \u03C7x 0o 1i li");

    private final Map<String, String> met = new TreeMap<>();

    /** The id met before that this one would be taken for; empty when there is none, or when it is the same. */
    public String before(String id) {
        String first = met.putIfAbsent(plain(id), id);
        return first == null || first.equals(id) ? "" : first;
    }

    /** What is left of an id when all that can be mistaken is taken away. */
    static String plain(String id) {
        String folded = Normalizer.normalize(id, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
        StringBuilder plain = new StringBuilder(folded.length());
        for (int at = 0; at < folded.length(); at++) {
            char letter = folded.charAt(at);
            int digit = Character.digit(letter, 10);
            char seen = digit >= 0 ? (char) ('0' + digit) : letter;
            boolean bare = Character.isLetterOrDigit(seen) || seen == '-';
            plain.append(bare ? TWINS.getOrDefault(seen, seen) : '_');
        }
        return plain.toString().replaceAll("_+", "_");
    }

    private static Map<Character, Character> twins(String pairs) {
        Map<Character, Character> twins = new TreeMap<>();
        for (String pair : pairs.split(" ")) {
            twins.put(pair.charAt(0), pair.charAt(1));
        }
        return twins;
    }
}
