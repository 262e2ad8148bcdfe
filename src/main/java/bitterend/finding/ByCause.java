package bitterend.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Findings as a reader is told them: errors first; where many come of one cause they stand together, the first three of them
 * told, of the others their places.
 *
 * @param alike what is told, cause by cause
 * @param others how many findings are of causes of which none is told
 */
public record ByCause(List<Alike> alike, int others) {
    /** How many causes a reader is told of. */
    public static final int MOST_TOLD = 300;
    /** So many findings of one cause are told one by one. */
    private static final int MOST_ALIKE = 5;

    private static final int FIRST_OF_MANY = 3;
    private static final Pattern ROW = Pattern.compile("(?:sheet .+, )?row ([0-9]+)");
    private static final Pattern FIGURES = Pattern.compile("[0-9]+");

    public ByCause {
        alike = List.copyOf(alike);
    }

    /**
     * Findings of one cause.
     *
     * @param told the first of them, at least one
     * @param more how many there are besides
     * @param where the places of those, in few words: {@code rows 5 to 61}; empty for none
     */
    public record Alike(List<Finding> told, int more, String where) {
        public Alike {
            told = List.copyOf(told);
        }
    }

    public static ByCause of(List<Finding> findings) {
        List<Finding> errorsFirst = new ArrayList<>(findings);
        errorsFirst.sort(Comparator.comparing(Finding::severity));
        Map<String, List<Finding>> causes = errorsFirst.stream()
                .collect(Collectors.groupingBy(ByCause::cause, LinkedHashMap::new, Collectors.toList()));
        boolean few = causes.values().stream().allMatch(all -> all.size() <= MOST_ALIKE) && causes.size() <= MOST_TOLD;
        if (few) {
            return new ByCause(errorsFirst.isEmpty() ? List.of() : List.of(new Alike(errorsFirst, 0, "")), 0);
        }
        List<Alike> alike =
                causes.values().stream().limit(MOST_TOLD).map(ByCause::alike).toList();
        int others =
                causes.values().stream().skip(MOST_TOLD).mapToInt(List::size).sum();
        return new ByCause(alike, others);
    }

    private static Alike alike(List<Finding> all) {
        int told = all.size() <= MOST_ALIKE ? all.size() : FIRST_OF_MANY;
        List<Finding> rest = all.subList(told, all.size());
        return new Alike(all.subList(0, told), rest.size(), where(rest));
    }

    /** Rows one behind another as from and to; of others the first three. */
    private static String where(List<Finding> rest) {
        List<Integer> rows = new ArrayList<>();
        for (Finding finding : rest) {
            Matcher row = ROW.matcher(finding.place());
            if (!row.matches()) {
                return "";
            }
            rows.add(Integer.valueOf(row.group(1)));
        }
        int last = rows.size() - 1;
        if (rows.isEmpty()) {
            return "";
        }
        if (rows.get(last) - rows.get(0) == last && last > 0) {
            return "rows " + rows.get(0) + " to " + rows.get(last);
        }
        String first = rows.stream().limit(FIRST_OF_MANY).map(String::valueOf).collect(Collectors.joining(", "));
        return last < FIRST_OF_MANY ? "rows " + first : "rows " + first + " ... " + rows.get(last);
    }

    /** What findings have in common that come of one mistake: all but the place and the figures. */
    private static String cause(Finding finding) {
        return finding.severity() + "\n" + finding.file() + "\n" + finding.field() + "\n"
                + FIGURES.matcher(finding.expected()).replaceAll("#");
    }
}
