package bitterend.report;

import bitterend.measure.Money;
import bitterend.quoting.LineQuote;
import bitterend.quoting.Quote;
import bitterend.quoting.QuoteLine;
import bitterend.quoting.Variation;
import bitterend.quoting.Variation.Kind;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.ArrayList;
import java.util.List;

/** What the customer could have instead, with its price: other lines, cheaper ones nearby, other quantities, a line by itself. */
final class QuoteChoices {
    private static final String OTHERS = "the other lines, made together with it, change by";

    private final Figures figures;
    private final QuoteWords words;

    QuoteChoices(Figures figures, QuoteWords words) {
        this.figures = figures;
        this.words = words;
    }

    /** A section where there is anything to choose. */
    void write(Writing page, Quote quote, boolean apart) {
        boolean other = List.of(Kind.INSTEAD, Kind.CHEAPER, Kind.QUANTITY).stream()
                .anyMatch(kind -> !quote.variations(kind).isEmpty());
        if (other || apart) {
            page.heading("What you could have instead");
        }
        table(page, quote, Kind.INSTEAD, this::what);
        table(page, quote, Kind.CHEAPER, variation -> nearby(quote, variation));
        table(page, quote, Kind.QUANTITY, variation -> "as above");
        if (apart) {
            table(page, quote, Kind.APART, variation -> "as above, ordered alone");
        }
    }

    /** What is made, in words. */
    private interface Saying {
        String of(Variation variation);
    }

    private void table(Writing page, Quote quote, Kind kind, Saying saying) {
        List<Variation> variations = quote.variations(kind);
        if (variations.isEmpty()) {
            return;
        }
        TableRows table = new TableRows(columns(kind).toArray(Column[]::new));
        for (Variation each : variations) {
            List<String> cells = new ArrayList<>(List.of(
                    "line " + each.line(),
                    saying.of(each),
                    Integer.toString(each.changed().quantity()),
                    figures.bare(each.price().each()),
                    figures.bare(each.price().price())));
            if (kind != Kind.APART) {
                cells.add(figures.bare(each.total()));
            }
            table.row(cells.toArray(String[]::new));
            Money others = others(quote, each);
            if (kind != Kind.APART && !others.equals(Money.ZERO)) {
                table.row("", OTHERS, "", "", figures.bare(others), "");
            }
        }
        page.tableApart(table);
    }

    /** What the other lines cost more or less than in the quote, since they are made together with another line. */
    private static Money others(Quote quote, Variation variation) {
        Money before = quote.total();
        for (LineQuote line : quote.lines()) {
            if (line.line().name().equals(variation.line())) {
                before = before.minus(line.buildUp().price());
            }
        }
        return variation.total().minus(variation.price().price()).minus(before);
    }

    /** What all lines come to is said of choices that leave the others as they are: not of a line by itself. */
    private List<Column> columns(Kind kind) {
        String currency = figures.currency().currency();
        List<Column> columns = new ArrayList<>(List.of(
                Column.words(title(kind)),
                Column.words("what"),
                Column.figure("how many"),
                Column.figure("each\n" + currency),
                Column.figure("price\n" + currency)));
        if (kind != Kind.APART) {
            columns.add(Column.figure("all lines then\nbefore tax, " + currency));
        }
        return columns;
    }

    private static String title(Kind kind) {
        return switch (kind) {
            case INSTEAD, CHEAPER -> "in place of";
            case QUANTITY -> "quantities";
            case APART -> "by itself";
        };
    }

    private String what(Variation variation) {
        return words.cell(variation.changed());
    }

    private String nearby(Quote quote, Variation variation) {
        QuoteLine asked = quote.lines().stream()
                .map(LineQuote::line)
                .filter(line -> line.name().equals(variation.line()))
                .findFirst()
                .orElse(variation.changed());
        String before = figures.briefly(asked.assembly().make().finished());
        String now = figures.briefly(variation.changed().assembly().make().finished());
        return now.equals(before)
                ? "the same, " + variation.changed().quantity() + " instead of " + asked.quantity()
                : now + " finished instead of " + before;
    }
}
