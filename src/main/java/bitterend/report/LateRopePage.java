package bitterend.report;

import bitterend.measure.Cost;
import bitterend.packing.explain.LateRope;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;

/** What would be left undone if rope came later than it is expected. */
public final class LateRopePage {
    private final Figures figures;

    public LateRopePage(Figures figures) {
        this.figures = figures;
    }

    /** The page of a shop. */
    public Document of(String shop, LateRope late) {
        Writing page = new Writing();
        page.title("If rope came later: " + shop + ", " + late.day());
        late.delays()
                .forEach(delay -> page.paragraph("Order " + delay.now().order() + " expected "
                        + delay.then().expected() + " instead of " + delay.now().expected() + ", counted on from "
                        + delay.then().from() + " instead of " + delay.now().from() + "."));
        if (late.hits().isEmpty()) {
            page.paragraph(
                    "Nothing more would be left undone" + (late.waiting().isEmpty() ? money(late.more()) : "") + ".");
        } else {
            int pieces =
                    late.hits().stream().mapToInt(hit -> hit.pieces().size()).sum();
            page.paragraph("Left undone then: " + FindingsPage.count(pieces, "piece") + " of "
                    + FindingsPage.count(late.hits().size(), "order") + ".");
            page.table(hits(late));
        }
        if (!late.waiting().isEmpty()) {
            page.paragraph(Brief.list("Not cut ahead then, while rope is short:", late.waiting(), "more", 3));
        }
        if (!late.spared().isEmpty()) {
            page.paragraph(Brief.list("Cut in time all the same:", late.spared(), "more", 3));
        }
        if (late.undone() > 0) {
            page.paragraph("Not planned in any case: " + FindingsPage.count(late.undone(), "piece") + ".");
        }
        page.paragraph("A question: nothing was written, and the plan in force stays.");
        return page.document();
    }

    private String money(Cost more) {
        int order = more.compareTo(Cost.ZERO);
        return order == 0
                ? ", at the same cost"
                : order > 0
                        ? "; the plan would cost " + figures.money(more) + " more"
                        : "; the plan would cost " + figures.money(Cost.ZERO.minus(more)) + " less";
    }

    private static TableRows hits(LateRope late) {
        TableRows table = new TableRows(
                Column.words("order"),
                Column.words("who for"),
                Column.words("pieces"),
                Column.words("must be\ncut by"),
                Column.words("off the rope\nthat comes"),
                Column.figure("late,\ndays"));
        late.hits()
                .forEach(hit -> table.row(
                        hit.order(),
                        hit.customer(),
                        Brief.named(hit.pieces()),
                        hit.cutBy().toString(),
                        hit.waits() ? hit.from().toString() : "",
                        hit.waits() ? Integer.toString(hit.late()) : ""));
        return table;
    }
}
