package bitterend.report;

import bitterend.buying.LearnedValue;
import bitterend.buying.Learning;
import bitterend.buying.Study;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import bitterend.stock.StockValue;

/** What was learned about the worth of a coil, beside the curve that was used before. */
public final class BuyValuePage {
    private final Figures figures;

    public BuyValuePage(Figures figures) {
        this.figures = figures;
    }

    /** The page of one rope; {@code before} is the curve without the cap of a study. */
    public Document of(Study study, StockValue before, Learning.Lesson lesson) {
        BuyWords words = new BuyWords(figures, java.util.List.of());
        Writing page = new Writing();
        page.heading("What a coil of " + study.rope().name() + " is worth");
        page.paragraph(verdict(study, lesson));
        page.gap();
        TableRows table = new TableRows(
                Column.figure("coil, " + figures.unit()),
                Column.figure("learned,\n% of price"),
                Column.figure("before,\n% of price"));
        for (LearnedValue.Knot knot : lesson.value().knots()) {
            table.row(
                    figures.bare(knot.length()),
                    words.percent(knot.share()),
                    words.percent(share(study, before, knot.length())));
        }
        page.table(table);
        return page.document();
    }

    private String verdict(Study study, Learning.Lesson lesson) {
        String effect = lesson.helps()
                ? "The learned curve helps: "
                : lesson.harms()
                        ? "The learned curve does harm: "
                        : "The learned curve makes no difference that can be told: ";
        boolean dearer = lesson.saved().millis() < 0;
        Cost size = dearer ? Cost.ZERO.minus(lesson.saved()) : lesson.saved();
        return effect + figures.money(size) + (dearer ? " dearer" : " cheaper") + " in "
                + study.size().weeks()
                + " weeks, with an error of "
                + figures.money(lesson.error()) + ", on " + lesson.scenarios()
                + " scenarios that did not teach it; what is on the rack at the end is valued as before.";
    }

    private static Ratio share(Study study, StockValue before, Length length) {
        long price = study.rope().price().of(length).millis();
        return price == 0 ? Ratio.ZERO : new Ratio(before.of(length).millis(), price);
    }
}
