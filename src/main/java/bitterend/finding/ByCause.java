package bitterend.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Findings as a reader is told them: errors first; of more than some hundred, those of one cause stand together, the first
 * of them told and the others counted.
 *
 * @param alike what is told, cause by cause
 * @param others how many findings are of causes of which none is told
 */
public record ByCause(List<Alike> alike, int others) {
    /** How many findings a reader is told one by one. */
    public static final int MOST_TOLD = 300;

    private static final Pattern FIGURES = Pattern.compile("[0-9]+");

    public ByCause {
        alike = List.copyOf(alike);
    }

    /**
     * Findings of one cause.
     *
     * @param told the first of them, at least one
     * @param more how many there are besides
     */
    public record Alike(List<Finding> told, int more) {
        public Alike {
            told = List.copyOf(told);
        }
    }

    public static ByCause of(List<Finding> findings) {
        List<Finding> errorsFirst = new ArrayList<>(findings);
        errorsFirst.sort(Comparator.comparing(Finding::severity));
        return findings.size() <= MOST_TOLD
                ? new ByCause(errorsFirst.isEmpty() ? List.of() : List.of(new Alike(errorsFirst, 0)), 0)
                : grouped(errorsFirst);
    }

    private static ByCause grouped(List<Finding> findings) {
        Map<String, List<Finding>> causes = findings.stream()
                .collect(Collectors.groupingBy(ByCause::cause, LinkedHashMap::new, Collectors.toList()));
        int each = Math.max(1, MOST_TOLD / causes.size());
        List<Alike> alike = causes.values().stream()
                .limit(MOST_TOLD)
                .map(all -> new Alike(all.subList(0, Math.min(each, all.size())), Math.max(0, all.size() - each)))
                .toList();
        int others =
                causes.values().stream().skip(MOST_TOLD).mapToInt(List::size).sum();
        return new ByCause(alike, others);
    }

    /** What findings have in common that come of one mistake: all but the place and the figures. */
    private static String cause(Finding finding) {
        return finding.severity() + "\n" + finding.file() + "\n" + finding.field() + "\n"
                + FIGURES.matcher(finding.expected()).replaceAll("#");
    }
}
