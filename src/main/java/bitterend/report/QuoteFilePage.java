package bitterend.report;

import bitterend.catalogue.Catalogue;
import bitterend.finding.Finding;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.quoting.BuildUp;
import bitterend.quoting.LineQuote;
import bitterend.quoting.PartPrices;
import bitterend.quoting.Quote;
import bitterend.quoting.QuoteLine;
import bitterend.quoting.RopeQuote;
import bitterend.quoting.Variation.Kind;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.List;
import java.util.stream.Collectors;

/** A quote as the estimator files it: how every price comes about, the rope drawn, the waste and who pays for it. */
public final class QuoteFilePage {
    private final Figures figures;

    public QuoteFilePage(Figures figures) {
        this.figures = figures;
    }

    /** The page of a quote of this shop; for the file, not for the customer. */
    public Document of(String shop, Catalogue catalogue, Quote quote) {
        Writing page = new Writing();
        page.title("For the file, not for the customer: quote", QuotePage.named(quote), shop);
        QuotePage.revision(page, quote);
        QuotePage.head(page, quote);
        delivery(page, quote);
        page.tableApart(lines(quote));
        provisos(page, quote);
        if (quote.holdsTogetherAlone()) {
            page.paragraph("Some line is dearer by itself: the customer's page says that its prices hold for the whole"
                    + " request.");
        }
        QuotePage.codes(quote).forEach(page::paragraph);
        page.paragraph(
                "What is said of each assembly, and shares in %, are rounded to the last digit and need not add up;"
                        + " what is said of a line adds up.");
        quote.lines().forEach(line -> line(page, catalogue, quote.policy().parts(), line));
        QuoteBuyingBlock buying = new QuoteBuyingBlock(figures, quote.request().day());
        for (RopeQuote rope : quote.ropes()) {
            QuoteRopeBlock block = new QuoteRopeBlock(figures, rope);
            block.write(page, catalogue);
            catalogue.findRope(rope.rope()).ifPresent(known -> buying.ofRope(page, rope.buying(), known));
            block.sharing(page);
        }
        buying.order(page, quote);
        if (!quote.neighbours().isEmpty()) {
            page.heading("Cheaper nearby");
            quote.neighbours().forEach(each -> page.paragraph(new QuoteNeighbourWords(figures).of(each)));
        }
        new QuoteChoices(figures, new QuoteWords(catalogue, figures)).write(page, quote, false);
        return page.document();
    }

    /** When it could be made, against the day by which it is asked for; why no day can be said. */
    private static void delivery(Writing page, Quote quote) {
        String asked = QuotePage.asked(quote);
        String why = quote.request().given().delivery().why();
        page.paragraph((asked.isEmpty() ? "Delivery: " : "Asked for by " + asked + ". Delivery: ")
                + quote.made()
                + (why.isEmpty() ? "." : ", since " + why + "."));
    }

    /** What is not priced, and who accepts that something is missing in a price. */
    private static void provisos(Writing page, Quote quote) {
        quote.notPriced()
                .forEach(line -> page.caution(line.asked().forFile() + " is not priced: " + line.why() + " ("
                        + line.findings().stream().map(Finding::told).collect(Collectors.joining("; ")) + ")."));
        if (quote.isCutShort()) {
            page.caution(
                    "worked out as far as the time went: drawn up again, or with more time, a line may cost a little"
                            + " more or less; keep the quote that is sent");
        }
        int gaps = quote.gaps().size();
        if (gaps > 0) {
            String accepted = quote.request().given().accepted();
            page.caution("in the prices " + (gaps == 1 ? "something is" : gaps + " things are")
                    + " missing, as said at the lines: "
                    + (accepted.isEmpty()
                            ? "there is no page for the customer unless somebody accepts that"
                            : "accepted by " + accepted));
        }
    }

    /** Every line with its price, and what it would cost by itself. */
    private TableRows lines(Quote quote) {
        String currency = figures.currency().currency();
        TableRows table = new TableRows(
                Column.words("line"),
                Column.words("rope"),
                Column.figure("how many"),
                Column.figure("each\n" + currency),
                Column.figure("price\n" + currency),
                Column.figure("by itself\n" + currency));
        for (LineQuote line : quote.lines()) {
            table.row(
                    line.line().name(),
                    line.line().rope() + (line.line().ownRope() ? ", own" : ""),
                    Integer.toString(line.line().quantity()),
                    figures.bare(line.buildUp().each()),
                    figures.bare(line.buildUp().price()),
                    quote.variations(Kind.APART).stream()
                            .filter(apart -> apart.line().equals(line.line().name()))
                            .findFirst()
                            .map(apart -> figures.bare(apart.price().price()))
                            .orElse(""));
        }
        table.row("", "total before tax", "", "", figures.bare(quote.total()), "");
        return table;
    }

    private void line(Writing page, Catalogue catalogue, PartPrices prices, LineQuote quoted) {
        QuoteLine line = quoted.line();
        page.heading("Line " + line.name() + ": " + line.quantity() + " at "
                + figures.currency().print(quoted.buildUp().each()));
        page.paragraph(new QuoteWords(catalogue, figures).what(line));
        page.tableApart(buildUp(quoted.buildUp()));
        page.tableApart(metres(quoted));
        new QuoteParts(figures, prices).write(page, line);
        booked(page, line);
        List<String> untimed = line.untimedEnds();
        if (!untimed.isEmpty()) {
            page.caution(
                    "no minutes are stated for " + String.join(", ", untimed) + ": its labour is not in the price");
        }
    }

    /** Which minutes are those that splicers booked, not those of the terminations. */
    private static void booked(Writing page, QuoteLine line) {
        if (line.asked().minutes() != QuoteLine.Asked.BY_THE_ENDS) {
            return;
        }
        List<String> said = line.demanded().work().stream()
                .flatMap(end -> line.findBooked(end).stream()
                        .map(time -> end.name() + " " + time.minutes() + " min, the mean of "
                                + FindingsPage.count(time.ends(), "end")
                                + (end.minutes() > 0 ? " (" + end.minutes() + " min are set)" : "")))
                .distinct()
                .toList();
        if (!said.isEmpty()) {
            page.paragraph("Minutes as booked at the bench: " + String.join("; ", said) + ".");
        }
    }

    private TableRows buildUp(BuildUp buildUp) {
        String currency = figures.currency().currency();
        TableRows table = new TableRows(
                Column.words(""),
                Column.figure("line\n" + currency),
                Column.figure("each\n" + currency),
                Column.figure("of the\nprice, %"));
        for (BuildUp.Item item : buildUp.items()) {
            row(table, item.kind().words(), item.amount(), buildUp);
        }
        row(table, "price", buildUp.price(), buildUp);
        return table;
    }

    private void row(TableRows table, String words, Money amount, BuildUp buildUp) {
        Money each = new Money(Math.floorDiv(2 * amount.minor() + buildUp.quantity(), 2L * buildUp.quantity()));
        table.row(
                words,
                figures.bare(amount),
                figures.bare(each),
                figures.percent(amount.minor(), buildUp.price().minor(), 1));
    }

    private TableRows metres(LineQuote quoted) {
        QuoteLine line = quoted.line();
        TableRows table = new TableRows(
                Column.words("rope"),
                Column.figure("line\n" + figures.unit()),
                Column.figure("each\n" + figures.unit()));
        length(table, "finished", line.finished().mm(), line.quantity());
        length(table, "cut", line.cut().mm(), line.quantity());
        if (!line.ownRope()) {
            length(table, "drawn", quoted.drawn().mm(), line.quantity());
        }
        return table;
    }

    private void length(TableRows table, String words, long mm, int quantity) {
        table.row(
                words,
                figures.bare(new Length(mm)),
                figures.bare(new Length(Math.floorDiv(2 * mm + quantity, 2L * quantity))));
    }
}
