package bitterend.report;

import bitterend.demand.SpliceLayout;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;

/** Where an end is marked before it is made, as a table, and what is counted. */
final class LayoutBlock {
    private final Figures figures;

    LayoutBlock(Figures figures) {
        this.figures = figures;
    }

    void write(Writing page, SpliceLayout layout) {
        page.heading("Marks, " + layout.end() + ": " + layout.name());
        TableRows table = new TableRows(
                Column.words("mark"),
                Column.words("on"),
                Column.figure("distance\n" + figures.fineUnit()),
                Column.words("from"),
                Column.figure("from cut end\n" + figures.fineUnit()),
                Column.words("what for"));
        for (BenchMarks.Line line : BenchMarks.of(layout, figures).lines()) {
            table.row(
                    line.mark().name(),
                    line.mark().on(),
                    figures.bareTape(line.distance()),
                    figures.sentence(line.mark().from()),
                    line.isFromCutEnd() ? figures.bareTape(line.place()) : "",
                    figures.sentence(line.mark().purpose()));
        }
        if (!layout.marks().isEmpty()) {
            page.table(table);
        }
        layout.counts().forEach(count -> page.paragraph("* " + figures.sentence(count) + "."));
        if (!layout.caution().isEmpty()) {
            page.paragraph(layout.caution());
        }
    }
}
