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
 * sheet of paper each carries the sum of those before it. What is below the total is kept on a sheet with it and a line.
 */
final class QuoteLineTable {
    /** So many letters of the column of words fill a line of it, on the safe side. */
    private static final int LETTERS = 84;
    /** The heads of the columns, and what is brought and carried forward. */
    private static final int AROUND = 45;
    /** A row of one line, such as a sum: nothing is carried forward from the last sheet. */
    private static final int ROW = 15;

    private final Figures figures;
    private final QuoteWords words;

    QuoteLineTable(Figures figures, QuoteWords words) {
        this.figures = figures;
        this.words = words;
    }

    /** @param behind what all that is said below the total takes */
    void write(Writing page, Quote quote, int behind) {
        List<List<LineQuote>> sheets = sheets(quote, SheetRoom.of(page.document()), behind);
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

    /**
     * The lines by the sheet of paper that holds them. The last is taken to a sheet with the total where what is behind that
     * would else be parted from it, and where it is not too much for one sheet.
     *
     * @param taken what is above them on the first
     */
    private List<List<LineQuote>> sheets(Quote quote, int taken, int behind) {
        int room = SheetRoom.WHOLE - AROUND - taken;
        List<List<LineQuote>> sheets = new ArrayList<>(List.of(new ArrayList<>()));
        for (LineQuote line : quote.lines()) {
            int high = high(line);
            if (high > room && !sheets.get(sheets.size() - 1).isEmpty()) {
                sheets.add(new ArrayList<>());
                room = SheetRoom.WHOLE - AROUND;
            }
            sheets.get(sheets.size() - 1).add(line);
            room -= high;
        }
        List<LineQuote> last = sheets.get(sheets.size() - 1);
        int below =
                behind + ROW * (quote.taxes().isEmpty() ? 1 : 2 + quote.taxes().size());
        if (last.size() > 1
                && below > room + ROW
                && high(last.get(last.size() - 1)) + below <= SheetRoom.WHOLE - AROUND + ROW) {
            sheets.add(new ArrayList<>(List.of(last.remove(last.size() - 1))));
        }
        return sheets;
    }

    private int high(LineQuote line) {
        return SheetRoom.of(words.cell(line.line()), LETTERS);
    }
}
