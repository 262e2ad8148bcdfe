package bitterend.report;

import bitterend.measure.Money;
import bitterend.measure.RatioText;
import bitterend.quoting.Letter.TaxRate;
import bitterend.quoting.LineQuote;
import bitterend.quoting.Quote;
import bitterend.quoting.TaxSum;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.ArrayList;
import java.util.List;

/**
 * The lines of a quote as the customer sees them, their total below their prices, and tax. Where they need more than one
 * sheet of paper each carries the sum of those before it.
 */
final class QuoteLineTable {
    /** Lines of type that a sheet holds below its margins, A4 and Letter alike. */
    private static final int SHEET = 44;
    /** What the head of the first sheet takes of them, beside its facts. */
    private static final int HEAD = 16;
    /** So many letters of the column of words fill a line of it, on the safe side. */
    private static final int LETTERS = 62;

    private final Figures figures;
    private final QuoteWords words;

    QuoteLineTable(Figures figures, QuoteWords words) {
        this.figures = figures;
        this.words = words;
    }

    void write(Writing page, Quote quote) {
        List<List<LineQuote>> sheets = sheets(quote);
        Money carried = Money.ZERO;
        for (int i = 0; i < sheets.size(); i++) {
            TableRows table = table();
            if (i > 0) {
                page.nextSheet();
                sum(table, "brought forward", carried);
            }
            for (LineQuote line : sheets.get(i)) {
                row(table, line);
                carried = carried.plus(line.buildUp().price());
            }
            if (i < sheets.size() - 1) {
                sum(table, "carried forward", carried);
            } else {
                totals(table, quote);
            }
            page.tableApart(table);
        }
    }

    private TableRows table() {
        String currency = figures.currency().currency();
        return new TableRows(
                Column.words("line"),
                Column.words("what"),
                Column.figure("how many"),
                Column.figure("each\n" + currency),
                Column.figure("price\n" + currency));
    }

    private void row(TableRows table, LineQuote line) {
        table.row(
                line.line().name(),
                words.cell(line.line()),
                Integer.toString(line.line().quantity()),
                figures.bare(line.buildUp().each()),
                figures.bare(line.buildUp().price()));
    }

    private void sum(TableRows table, String what, Money amount) {
        table.row("", what, "", "", figures.bare(amount));
    }

    private void totals(TableRows table, Quote quote) {
        sum(table, "total before tax", quote.total());
        List<TaxSum> taxes = quote.taxes();
        for (TaxSum tax : taxes) {
            String rate = tax.rate().name().equals(TaxRate.NO_TAX)
                    ? "without tax"
                    : tax.rate().name() + ", " + RatioText.percent(tax.rate().rate());
            sum(table, taxes.size() == 1 ? rate : rate + ", of " + figures.bare(tax.net()), tax.tax());
        }
        if (!taxes.isEmpty()) {
            sum(table, "total with tax", quote.totalWithTax());
        }
    }

    /** The lines by the sheet of paper that holds them. */
    private List<List<LineQuote>> sheets(Quote quote) {
        int facts = quote.request().recipient().address().size();
        int room = SHEET - HEAD - facts;
        List<List<LineQuote>> sheets = new ArrayList<>(List.of(new ArrayList<>()));
        for (LineQuote line : quote.lines()) {
            int high = high(words.cell(line.line()));
            List<LineQuote> last = sheets.get(sheets.size() - 1);
            if (high > room && !last.isEmpty()) {
                sheets.add(new ArrayList<>());
                room = SHEET - 2;
            }
            sheets.get(sheets.size() - 1).add(line);
            room -= high;
        }
        return sheets;
    }

    private static int high(String cell) {
        return cell.lines()
                .mapToInt(line -> 1 + Math.max(0, line.length() - 1) / LETTERS)
                .sum();
    }
}
