package bitterend.report;

import bitterend.report.page.Document;
import bitterend.report.page.Wording;
import java.util.List;

/** Words that keep to so many lines of a page of text; what does not fit is counted. */
final class Brief {
    private static final int WIDTH = Document.WIDTH - 2;

    private Brief() {}

    /** {@code lead a; b; and 3 more}, with as many of the items as go into the lines, at least one. */
    static String list(String lead, List<String> items, String more, int lines) {
        int shown = items.size();
        while (shown > 1 && lines(words(lead, items, more, shown)) > lines) {
            shown--;
        }
        return words(lead, items, more, shown);
    }

    /** How many of these paragraphs go into the lines, if one more line says how many are left; all if they fit. */
    static int fitting(List<String> paragraphs, int lines) {
        if (paragraphs.stream().mapToInt(Brief::lines).sum() <= lines) {
            return paragraphs.size();
        }
        int taken = 1;
        int shown = 0;
        while (shown < paragraphs.size() && taken + lines(paragraphs.get(shown)) <= lines) {
            taken += lines(paragraphs.get(shown));
            shown++;
        }
        return shown;
    }

    /** One or two by their ids, more by the first and the last: {@code G-2112/1.1 to G-2112/1.4 (4)}. */
    static String named(List<String> ids) {
        return ids.size() <= 2
                ? String.join(", ", ids)
                : ids.get(0) + " to " + ids.get(ids.size() - 1) + " (" + ids.size() + ")";
    }

    private static String words(String lead, List<String> items, String more, int shown) {
        String named = lead + " " + String.join("; ", items.subList(0, shown));
        return named + (shown == items.size() ? "." : "; " + (items.size() - shown) + " " + more + ".");
    }

    private static int lines(String words) {
        return Wording.wrapped(words, WIDTH).size();
    }
}
