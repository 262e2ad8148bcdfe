package bitterend.report;

import bitterend.catalogue.Catalogue;
import bitterend.quoting.LineQuote;
import bitterend.quoting.Quote;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.List;

/** A quote as the customer gets it: what, how many, at what price, and how long it stands. No figure of the shop's own. */
public final class QuotePage {
    private final Figures figures;

    public QuotePage(Figures figures) {
        this.figures = figures;
    }

    /** The page of a quote of this shop. */
    public Document of(String shop, Catalogue catalogue, Quote quote) {
        Writing page = new Writing();
        page.title("Quote", quote.request().id(), shop);
        head(page, quote);
        page.tableApart(lines(catalogue, quote));
        page.paragraph("Total before tax: " + figures.currency().print(quote.total()));
        page.heading("Please note");
        page.paragraph("Lengths are as stated in each line, made to the rope maker's current instructions.");
        codes(quote).forEach(page::paragraph);
        page.paragraph(
                "This quote is for the making of the assemblies described. It states no strength and no safe load; for"
                        + " lifting and life safety a competent person and the local code decide.");
        return page.document();
    }

    /** The code that slings are made under; it stands on both pages. */
    static List<String> codes(Quote quote) {
        CodeWords codes = new CodeWords();
        quote.lines()
                .forEach(line ->
                        codes.add("line " + line.line().name(), line.line().demanded()));
        return codes.sentences();
    }

    static void head(Writing page, Quote quote) {
        if (!quote.request().customer().isEmpty()) {
            page.paragraph("For " + quote.request().customer());
        }
        page.paragraph(quote.request().day() + ", valid until " + quote.validUntil());
    }

    private TableRows lines(Catalogue catalogue, Quote quote) {
        QuoteWords words = new QuoteWords(catalogue, figures);
        String currency = figures.currency().currency();
        TableRows table = new TableRows(
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
