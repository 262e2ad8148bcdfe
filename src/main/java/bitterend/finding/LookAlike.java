package bitterend.finding;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * Finds ids that a person, a file system or a search would take for one another: those that differ only by case, by forms
 * of one letter (full width, raised), by letters of another script that look alike, by signs that file names do not bear, by
 * such a sign in front or behind, by spaces or by zeros in front of a number.
 */
public final class LookAlike {
    /** Letters of Greek and Cyrillic, and digits, beside the Latin letter they are taken for. From memory, no source. */
    private static final Map<Character, Character> TWINS = twins(
            "\u0430a \u0432b \u0435e \u0456i \u0458j \u043Ak \u043Cm \u043Dh \u043Eo \u0440p \u0441c \u0442t \u0443y \u0445x"
                    + " \u0455s \u03B1a \u03B2b \u03B5e \u03B6z \u03B7h \u03B9i \u03BAk \u03BCm \u03BDn \u03BFo \u03C1p \u03C4t"
                    + " \u03C5y \u03C7x 0o 1i li");

    private static final Pattern EDGES = Pattern.compile("(?<=.)_$|^_(?=.)");
    private static final Pattern LEADING_ZEROS = Pattern.compile("(?<![0-9])0+(?=[0-9])");

    private final Set<String> ids = new HashSet<>();
    private final Map<String, String> bySight = new HashMap<>();
    private final Map<String, String> byNumber = new HashMap<>();

    /** The id met before that this one would be taken for; empty when there is none, or when it was met itself. */
    public String before(String id) {
        if (id.isEmpty() || !ids.add(id)) {
            return "";
        }
        String sight = bySight.putIfAbsent(plain(id), id);
        String number = byNumber.putIfAbsent(plain(bare(id)), id);
        return sight != null ? sight : number != null ? number : "";
    }

    /** Without spaces, and without zeros in front of a number: {@code R 01} as {@code R1}. */
    private static String bare(String id) {
        String folded = Normalizer.normalize(id, Normalizer.Form.NFKC).replaceAll("\\s", "");
        return LEADING_ZEROS.matcher(folded).replaceAll("");
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
        return EDGES.matcher(plain.toString().replaceAll("_+", "_")).replaceAll("");
    }

    private static Map<Character, Character> twins(String pairs) {
        Map<Character, Character> twins = new TreeMap<>();
        for (String pair : pairs.split(" ")) {
            twins.put(pair.charAt(0), pair.charAt(1));
        }
        return twins;
    }
}
