package bitterend.report;

import bitterend.demand.SpliceLayout;
import bitterend.demand.SpliceLayout.Mark;
import bitterend.measure.FineLength;
import bitterend.report.TextTable.Column;

/** Where an end is marked before it is made, as a table, and what is counted. */
final class LayoutBlock {
    private final Figures figures;

    LayoutBlock(Figures figures) {
        this.figures = figures;
    }

    void write(Page page, SpliceLayout layout) {
        page.heading("Marks, " + layout.end() + ": " + layout.name());
        TextTable table = new TextTable(
                Column.words("mark"),
                Column.words("on"),
                Column.figure("distance\n" + figures.fineUnit()),
                Column.words("from"),
                Column.figure("from cut end\n" + figures.fineUnit()));
        for (Mark mark : layout.marks()) {
            table.row(
                    mark.name(),
                    mark.on(),
                    bench(mark.distance()),
                    mark.from(),
                    mark.findFromCutEnd().map(this::bench).orElse(""));
        }
        page.table(table);
        layout.counts().forEach(count -> page.paragraph(0, "* " + count + "."));
        if (!layout.caution().isEmpty()) {
            page.paragraph(0, layout.caution());
        }
    }

    /** A mark is set to a millimetre: the next one up. */
    private String bench(FineLength length) {
        return figures.fine(length.roundedUp().fine());
    }
}
