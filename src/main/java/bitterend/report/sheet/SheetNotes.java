package bitterend.report.sheet;

import bitterend.finding.Finding;
import bitterend.measure.Units;
import bitterend.report.Cautions;
import bitterend.report.CodeWords;
import bitterend.report.FirstArticle;
import bitterend.report.PlanView;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What to know before the cut, as far as it concerns what is on these sheets: what is said of other order lines is on the
 * pages of the plan.
 */
final class SheetNotes {
    private final PlanView view;
    private final Units units;

    SheetNotes(PlanView view, Units units) {
        this.view = view;
        this.units = units;
    }

    /**
     * What is not in the plan, where the sheets are all of it; the code that slings are made under; then what else to
     * know of these lines.
     *
     * @param lines those of which pieces are on the sheets
     */
    List<String> of(List<CardWork> lines) {
        CodeWords codes = new CodeWords();
        Map<String, List<Finding>> said = new LinkedHashMap<>();
        for (CardWork line : lines) {
            codes.add(line.id(), line.demanded());
            said.put(
                    line.id(),
                    said(line.demanded().findings().stream()
                            .map(note -> note.in(units))
                            .toList()));
        }
        List<String> notes = new ArrayList<>(view.part().whole() ? Cautions.leftOut(view.notes()) : List.of());
        notes.addAll(codes.sentences());
        notes.addAll(Cautions.ofLines(said));
        if (lines.stream().anyMatch(line -> line.assembly().terms().use().isLifting())) {
            notes.addAll(Cautions.sentences(ofTheShop()));
        }
        return notes;
    }

    /** What is said of the shop and of no order line: the code of its slings. */
    private List<Finding> ofTheShop() {
        Set<Finding> ofLines = view.lines().stream()
                .flatMap(line -> line.demanded().findings().stream())
                .map(note -> note.in(units))
                .collect(Collectors.toSet());
        return said(view.notes()).stream()
                .filter(note -> !ofLines.contains(note))
                .toList();
    }

    private static List<Finding> said(List<Finding> notes) {
        return notes.stream()
                .filter(note -> !note.leavesOut() && !FirstArticle.isSaidInItsRow(note))
                .toList();
    }
}
