package bitterend.report.sheet;

import bitterend.report.Figures;
import bitterend.report.sheet.CardSheet.EndBlock;
import bitterend.report.sheet.LayoutSheet.MarkLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The marks of a day's splices: one table for each splice and rope, its eyes below one another. */
final class SpliceTables {
    private final Figures figures;

    SpliceTables(Figures figures) {
        this.figures = figures;
    }

    /** All that the rows of one table share. */
    private record Head(String name, String rope, List<String> marks, List<String> counts, String caution) {}

    /** An eye and its figures. */
    private record Eye(String eye, List<String> figures) {}

    List<SpliceTable> of(List<CardWork> work) {
        Map<Head, Map<Eye, List<String>>> tables = new LinkedHashMap<>();
        for (CardWork line : work) {
            for (EndBlock end : new EndBlocks(line.demanded(), figures).all()) {
                if (!end.marks().isEmpty()) {
                    tables.computeIfAbsent(head(line, end), any -> new LinkedHashMap<>())
                            .computeIfAbsent(eye(end), any -> new ArrayList<>())
                            .add(line.id() + " " + end.shortly());
                }
            }
        }
        List<SpliceTable> all = new ArrayList<>();
        tables.forEach((head, eyes) -> all.add(
                new SpliceTable(head.name(), head.rope(), head.marks(), lines(eyes), head.counts(), head.caution())));
        return all;
    }

    private static List<SpliceTable.Line> lines(Map<Eye, List<String>> eyes) {
        return eyes.entrySet().stream()
                .map(each -> new SpliceTable.Line(
                        each.getKey().eye(), each.getKey().figures(), String.join(", ", each.getValue())))
                .toList();
    }

    private static Head head(CardWork line, EndBlock end) {
        return new Head(
                end.made(),
                line.assembly().ropes().get(0),
                end.marks().stream().map(MarkLine::name).toList(),
                end.counts(),
                end.caution());
    }

    private static Eye eye(EndBlock end) {
        return new Eye(
                end.facts().isEmpty()
                        ? (end.isAlong() ? "from the cut end of end A" : "")
                        : end.facts().get(0),
                end.marks().stream()
                        .map(mark -> mark.fromCutEnd().isEmpty() ? "+ " + mark.distance() : mark.fromCutEnd())
                        .toList());
    }
}
