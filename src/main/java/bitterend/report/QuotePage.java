package bitterend.report;

import bitterend.catalogue.Catalogue;
import bitterend.quoting.LineQuote;
import bitterend.quoting.Quote;
import bitterend.report.TextTable.Column;

/** A quote as the customer gets it: what, how many, at what price, and how long it stands. No figure of the shop's own. */
public final class QuotePage {
    private final Figures figures;
    private final Ink ink;

    public QuotePage(Figures figures, Ink ink) {
        this.figures = figures;
        this.ink = ink;
    }

    /** The page of a quote of this shop. */
    public String text(String shop, Catalogue catalogue, Quote quote) {
        Page page = new Page(ink);
        page.title("Quote " + quote.request().id() + ", " + shop);
        head(page, quote);
        page.blank();
        page.table(lines(catalogue, quote));
        page.blank();
        page.paragraph(0, "Total before tax: " + figures.currency().print(quote.total()));
        page.heading("Please note");
        page.paragraph(0, "Lengths are as stated in each line, made to the rope maker's current instructions.");
        page.paragraph(
                0,
                "This quote is for the making of the assemblies described. It states no strength and no safe load; for"
                        + " lifting and life safety a competent person and the local code decide.");
        return page.toString();
    }

    static void head(Page page, Quote quote) {
        if (!quote.request().customer().isEmpty()) {
            page.paragraph(0, "For " + quote.request().customer());
        }
        page.paragraph(0, quote.request().day() + ", valid until " + quote.validUntil());
    }

    private TextTable lines(Catalogue catalogue, Quote quote) {
        QuoteWords words = new QuoteWords(catalogue, figures);
        String currency = figures.currency().currency();
        TextTable table = new TextTable(
                Column.words("line"),
                Column.words("what"),
                Column.figure("how many"),
                Column.figure("each\n" + currency),
                Column.figure("price\n" + currency));
        for (LineQuote line : quote.lines()) {
            table.row(
                    line.line().name(),
                    words.what(line.line()),
                    Integer.toString(line.line().quantity()),
                    figures.bare(line.buildUp().each()),
                    figures.bare(line.buildUp().price()));
        }
        return table;
    }
}
