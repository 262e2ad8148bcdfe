package bitterend.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the word that was probably meant. */
public final class Nearest {
    private Nearest() {}

    /** {@code ; did you mean three-strand-eye?}, or nothing when no known word is near. */
    public static String hint(String word, Collection<String> known) {
        return of(word, known).map(near -> "; did you mean " + near + "?").orElse("");
    }

    /** The nearest of the known words, if at most a third of its letters have to change. */
    public static Optional<String> of(String word, Collection<String> known) {
        return known.stream()
                .filter(each -> distance(word, each) * 3 <= each.length())
                .min(Comparator.comparingInt((String each) -> distance(word, each))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** Letters to change, insert or leave out (V. I. Levenshtein 1966). */
    static int distance(String from, String to) {
        int[] above = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int[] row = new int[to.length() + 1];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int changed = above[j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(changed, Math.min(above[j], row[j - 1]) + 1);
            }
            above = row;
        }
        return above[to.length()];
    }
}
