package bitterend.serve;

import bitterend.demand.Demanded;
import bitterend.demand.Derivation;
import bitterend.finding.Finding;
import bitterend.report.Figures;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What is said beside the rows of a table that was typed: the cut lengths, and what is wrong. */
final class RowNotes {
    private static final int MOST_NAMED = 4;

    private final Map<String, String> cuts = new HashMap<>();
    private final Map<String, List<String>> wrong = new TreeMap<>();
    private final Map<String, Set<String>> fields = new HashMap<>();
    private final List<Finding> told = new ArrayList<>();

    /** Everything that is found in a file of this name. */
    RowNotes(List<Finding> findings, String file) {
        for (Finding finding : findings) {
            if (finding.file().equals(file) && (finding.isError() || finding.leavesOut())) {
                wrong.computeIfAbsent(finding.place(), place -> new ArrayList<>())
                        .add(finding.field() + ": found \"" + finding.found() + "\", expected " + finding.expected());
                fields.computeIfAbsent(finding.place(), place -> new HashSet<>())
                        .add(finding.field());
                told.add(finding);
            }
        }
    }

    /** Adds the cut length of what is made of a row, by its place. */
    void cut(String place, Demanded demanded, Figures figures) {
        demanded.derivations().stream()
                .findFirst()
                .map(Derivation::cut)
                .ifPresent(cut -> cuts.merge(place, figures.length(cut), (one, other) -> one + ", " + other));
    }

    /** A row with what is said of it; the header is row 0. */
    BookRow row(int number, List<String> cells) {
        String place = "row " + (number + 1);
        return new BookRow(
                number,
                cells,
                cuts.getOrDefault(place, ""),
                wrong.getOrDefault(place, List.of()),
                fields.getOrDefault(place, Set.of()));
    }

    /** What several rows have in common that is wrong, by cause: {@code 12 rows, 2, 3, 5 ... 40: rope: expected ...}. */
    List<String> causes() {
        Map<String, List<Finding>> causes = new LinkedHashMap<>();
        told.forEach(finding -> causes.computeIfAbsent(
                        finding.field() + ": expected " + finding.expected(), cause -> new ArrayList<>())
                .add(finding));
        List<String> words = new ArrayList<>();
        causes.forEach((cause, all) -> {
            if (all.size() > 1) {
                words.add(all.size() + " rows, " + places(all) + ": " + cause);
            }
        });
        return words;
    }

    private static String places(List<Finding> all) {
        List<String> rows =
                all.stream().map(finding -> finding.place().replace("row ", "")).toList();
        return rows.size() <= MOST_NAMED
                ? String.join(", ", rows)
                : String.join(", ", rows.subList(0, MOST_NAMED - 1)) + " ... " + rows.get(rows.size() - 1);
    }

    /** What is wrong with no row of these. */
    List<String> elsewhere(int rows) {
        List<String> words = new ArrayList<>();
        wrong.forEach((place, each) -> {
            if (!place.matches("row [0-9]+") || Integer.parseInt(place.substring(4)) > rows + 1) {
                words.addAll(each);
            }
        });
        return words;
    }

    /** Whether nothing is wrong. */
    boolean isSound() {
        return wrong.isEmpty();
    }
}
