package bitterend.report.sheet;

import bitterend.report.Cautions;
import bitterend.report.Figures;
import bitterend.report.PlanView;
import java.util.List;
import java.util.Map;

/** The splice cards of a plan, as a page for a screen and on paper. */
public final class CardPage {
    private final PlanView view;
    private final List<CardSheet> cards;
    private final String made;

    /**
     * @param view the plan
     * @param figures how figures are printed
     * @param work what the order lines ask of the splicers
     * @param made how the plan came about
     */
    public CardPage(PlanView view, Figures figures, List<CardWork> work, String made) {
        this.view = view;
        this.made = made;
        cards = new Cards(view, figures).of(work);
    }

    /** The cards alone, to be set on another page, in the order in which the plan cuts. */
    public List<CardSheet> cards() {
        return cards;
    }

    /** One file that opens without a network. */
    public String html() {
        return page(
                SheetPage.fonts() + SheetPage.style("sheet") + SheetPage.style("cards") + SheetPage.style("screen"));
    }

    /** The same on paper. */
    public byte[] pdf(Paper paper) {
        return SheetPdf.pdf(page(SheetPage.style("sheet")
                + SheetPage.style("cards")
                + SheetPdf.pageStyle(paper)
                + SheetPdf.markStyle(view.mark().words())));
    }

    private String page(String style) {
        return new SheetPage()
                .render(
                        "cards.jte",
                        Map.of(
                                "shop",
                                view.shop(),
                                "day",
                                view.plan().day().toString(),
                                "mark",
                                view.mark().words(),
                                "made",
                                made,
                                "cards",
                                cards,
                                "without",
                                Cautions.leftOut(view.notes()),
                                "cautions",
                                Cautions.ALWAYS,
                                "style",
                                style));
    }
}
