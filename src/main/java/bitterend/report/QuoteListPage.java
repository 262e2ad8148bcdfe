package bitterend.report;

import bitterend.measure.Money;
import bitterend.quoting.life.QuoteEvent;
import bitterend.quoting.life.QuoteStanding;
import bitterend.quoting.life.QuoteState;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.time.LocalDate;
import java.util.List;

/** The kept quotes of a shop and how far each has come, with the sums. */
public final class QuoteListPage {
    private final Figures figures;

    public QuoteListPage(Figures figures) {
        this.figures = figures;
    }

    /** The page of a day. */
    public Document of(String shop, LocalDate day, List<QuoteStanding> quotes) {
        Writing page = new Writing();
        page.title("Quotes on", day.toString(), shop);
        if (quotes.isEmpty()) {
            page.paragraph("No quote is kept yet.");
            return page.document();
        }
        page.tableApart(list(quotes));
        sums(page, quotes);
        return page.document();
    }

    /** The sums alone. */
    public Document sums(List<QuoteStanding> quotes) {
        Writing page = new Writing();
        sums(page, quotes);
        return page.document();
    }

    private void sums(Writing page, List<QuoteStanding> quotes) {
        page.heading("Sums");
        page.tableApart(table(quotes));
        page.paragraph("Sums are before tax, of the accepted revision of each quote, else of its last.");
    }

    private TableRows list(List<QuoteStanding> quotes) {
        TableRows table = new TableRows(
                Column.words("quote"),
                Column.words("customer"),
                Column.figure("total\n" + figures.currency().currency()),
                Column.words("valid until"),
                Column.words("state"));
        for (QuoteStanding quote : quotes) {
            table.row(
                    quote.head().name().words(),
                    quote.head().customer(),
                    figures.bare(quote.head().total()),
                    quote.head().validUntil().toString(),
                    state(quote));
        }
        return table;
    }

    /** How far it has come, since when, and the order that came of it. */
    public static String state(QuoteStanding quote) {
        String because = quote.because()
                .filter(event -> event.what().state() == quote.state())
                .map(QuoteListPage::because)
                .orElse("");
        return quote.state().word() + because;
    }

    private static String because(QuoteEvent event) {
        return " on " + event.day()
                + (event.order().isEmpty() ? "" : ", order " + event.order())
                + (event.said().note().isEmpty() ? "" : ": " + event.said().note());
    }

    private TableRows table(List<QuoteStanding> quotes) {
        TableRows table = new TableRows(
                Column.words("state"),
                Column.figure("quotes"),
                Column.figure("total\n" + figures.currency().currency()));
        for (QuoteState state : QuoteState.values()) {
            List<QuoteStanding> of =
                    quotes.stream().filter(each -> each.state() == state).toList();
            if (!of.isEmpty()) {
                table.row(state.word(), Integer.toString(of.size()), figures.bare(total(of)));
            }
        }
        table.row("all", Integer.toString(quotes.size()), figures.bare(total(quotes)));
        return table;
    }

    private static Money total(List<QuoteStanding> quotes) {
        return quotes.stream().map(each -> each.head().total()).reduce(Money.ZERO, Money::plus);
    }
}
