package bitterend.report.sheet;

import bitterend.demand.Demanded;
import bitterend.demand.Piece;
import bitterend.demand.SpliceLayout;
import bitterend.report.BenchMarks;
import bitterend.report.Figures;
import bitterend.report.sheet.LayoutSheet.MarkLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The splice layouts of a day, alike ends together. */
final class Layouts {
    private final Figures figures;

    Layouts(Figures figures) {
        this.figures = figures;
    }

    List<LayoutSheet> of(List<Demanded> work) {
        Map<LayoutSheet, List<String>> alike = new LinkedHashMap<>();
        for (Demanded demanded : work) {
            if (demanded.pieces().isEmpty()) {
                continue;
            }
            Piece first = demanded.pieces().get(0);
            String line = first.order() + "/" + first.source().line();
            for (SpliceLayout layout : demanded.layouts()) {
                if (!layout.marks().isEmpty()) {
                    alike.computeIfAbsent(sheet(layout), key -> new ArrayList<>())
                            .add(line + " " + layout.end());
                }
            }
        }
        List<LayoutSheet> sheets = new ArrayList<>();
        alike.forEach((sheet, lines) ->
                sheets.add(new LayoutSheet(sheet.name(), lines, sheet.marks(), sheet.counts(), sheet.caution())));
        return sheets;
    }

    private LayoutSheet sheet(SpliceLayout layout) {
        List<MarkLine> marks = EndBlocks.lines(BenchMarks.of(layout, figures), figures);
        return new LayoutSheet(layout.name(), List.of(), marks, layout.counts(), layout.caution());
    }
}
