package bitterend.report;

import bitterend.packing.ReelDraw;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.List;
import java.util.stream.Collectors;

/** One reel on the page: what it is, the tape beside the cutting table, what happens to the rest. */
final class ReelBlock {
    private final PlanView view;
    private final Figures figures;
    private final Tape tape;
    private final ReelWords words;
    private final RowWords rows;

    ReelBlock(PlanView view, Figures figures, Tape tape) {
        this.view = view;
        this.figures = figures;
        this.tape = tape;
        words = new ReelWords(view, figures);
        rows = new RowWords(view, figures);
    }

    void write(Writing page, ReelDraw draw) {
        page.heading("Reel " + draw.reel() + ": " + view.rope(draw).name());
        String promise = words.promise(draw);
        if (!promise.isEmpty()) {
            page.paragraph(promise);
        }
        page.paragraph(sentence(words.rope(draw)));
        page.paragraph(sentence(words.stands(draw)));
        page.paragraph(sentence(words.contents(draw)));
        String before = words.eachCut(draw);
        if (!before.isEmpty()) {
            page.paragraph("Before each cut: " + before + ".");
        }
        words.cautions(draw).forEach(page::caution);
        String counter = words.counter(draw);
        if (!counter.isEmpty()) {
            page.caution(counter);
        }
        page.gap();
        page.table(table(draw, view.marks(draw)));
        page.gap();
        page.paragraph("Left: " + words.rest(draw));
    }

    private static String sentence(List<Fact> facts) {
        return LengthsPage.sentence(facts.stream().map(Fact::toString).collect(Collectors.joining(", ")));
    }

    private TableRows table(ReelDraw draw, List<Mark> marks) {
        String unit = "\n" + figures.unit();
        TableRows table = new TableRows(
                Column.drawing(""),
                Column.figure("cut at" + unit),
                Column.figure("piece" + unit),
                Column.words("order"),
                Column.words("who for, how it ends"),
                Column.figure("left on\nreel, " + figures.unit()));
        RowWords.Words above = new RowWords.Words(List.of(), "", List.of());
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            RowWords.Words said = rows.of(draw, mark);
            table.row(
                    tape.cell(mark.kind(), i == marks.size() - 1),
                    figures.bare(view.reading(draw, mark)),
                    mark.length().isPositive() ? figures.bare(view.length(draw, mark)) : "",
                    mark.name(),
                    String.join("\n", said.under(above).lines()),
                    figures.bareTotal(mark.left()));
            above = said;
        }
        return table;
    }
}
