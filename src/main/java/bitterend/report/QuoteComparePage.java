package bitterend.report;

import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.quoting.BuildUp.Kind;
import bitterend.quoting.after.AfterCalculation;
import bitterend.quoting.after.AfterLine;
import bitterend.quoting.after.RopePrice;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What was quoted against what was posted, line by line and item by item, and the margin that was earned. */
public final class QuoteComparePage {
    private final Figures figures;

    public QuoteComparePage(Figures figures) {
        this.figures = figures;
    }

    /** The page of a job of which at least one line is cut whole. */
    public Document of(AfterCalculation after) {
        Writing page = new Writing();
        page.title("Quoted and posted: quote", after.quote(), "order " + String.join(", ", after.orders()));
        ropes(page, after);
        for (AfterLine line : after.lines()) {
            page.heading(
                    "Line " + line.quoted().name() + ": " + line.quoted().what().quantity() + " for "
                            + figures.currency().print(line.quoted().price()));
            if (line.pieces().isWhole()) {
                line(page, line);
            } else {
                page.paragraph("Not compared: cut so far " + line.pieces().good() + " of "
                        + FindingsPage.count(line.pieces().ordered(), "piece") + ".");
            }
        }
        all(page, after.whole());
        if (!after.asPlanned().isEmpty()) {
            page.paragraph("More is to be cut off reel " + String.join(", ", after.asPlanned())
                    + " by the plan of these pieces: until it is, their waste counts as planned.");
        }
        page.paragraph("Rope is counted at "
                + after.sources().stream()
                        .sorted()
                        .map(RopePrice.Source::words)
                        .collect(Collectors.joining(", else at "))
                + "; waste by the rule of the quote: value that left the rack by the worth of coils on the day of the cut,"
                + " opening and fetching of reels, shared by what the pieces of a draw took. Fittings are those of the order as it is now, at the prices of"
                + " today, or as the request stated them. Spoilage is the rope of spoiled pieces, less what of it came"
                + " back to the rack; scrap is credited nothing, whatever became of it. Freight is what"
                + " was booked for the reels that were cut, by the length drawn; where nothing was booked, it counts as"
                + " quoted. "
                + (after.tellsFreight()
                        ? "All freight is in that line, by reel, by weight and by order, and none in rope and waste."
                        : "This quote does not say how much freight is in its rope: freight by reel and by weight is in"
                                + " quoted rope, and in posted rope that is counted at an offer; of reels that are counted at"
                                + " what they were paid for it is in posted freight.")
                + " Setting up, samples and tests, packing and overhead are not booked: they count as quoted.");
        return page.document();
    }

    /** The page where nothing is compared yet. */
    public static Document nothing(String quote, String why) {
        Writing page = new Writing();
        page.title("Quoted and posted: quote", quote, "");
        page.paragraph(why.substring(0, 1).toUpperCase(Locale.ROOT) + why.substring(1) + ".");
        return page.document();
    }

    private void ropes(Writing page, AfterCalculation after) {
        TableRows table = new TableRows(
                Column.words("rope"),
                Column.words(""),
                Column.figure("pieces"),
                Column.figure("pieces and\ncut loss, " + figures.unit()),
                Column.figure("drawn\n" + figures.unit()));
        for (AfterCalculation.OfRope rope : after.ropes()) {
            drawn(
                    table,
                    rope.rope(),
                    "quoted",
                    rope.pieces().quoted(),
                    rope.taken().quoted(),
                    rope.drawn().quoted());
            drawn(
                    table,
                    "",
                    "posted",
                    rope.pieces().posted(),
                    rope.taken().posted(),
                    rope.drawn().posted());
        }
        page.tableApart(table);
    }

    private void drawn(TableRows table, String rope, String what, int pieces, Length taken, Length drawn) {
        table.row(rope, what, Integer.toString(pieces), figures.bare(taken), figures.bare(drawn));
    }

    private void line(Writing page, AfterLine line) {
        TableRows table = money();
        Map<Kind, Money> posted = line.posted();
        for (Kind kind : Kind.values()) {
            Money amount = posted.getOrDefault(kind, Money.ZERO);
            Money quoted = posted.containsKey(kind) ? line.quoted(kind) : Money.ZERO;
            if (!amount.equals(Money.ZERO) || !quoted.equals(Money.ZERO)) {
                row(table, AfterLine.words(kind), quoted, amount);
            }
        }
        foot(table, List.of(line));
        page.tableApart(table);
        page.paragraph(labour(line));
        if (line.pieces().spoiled() > 0) {
            page.paragraph(FindingsPage.count(line.pieces().spoiled(), "piece") + " more spoiled or cut again.");
        }
    }

    private TableRows money() {
        String currency = figures.currency().currency();
        return new TableRows(
                Column.words(""),
                Column.figure("quoted\n" + currency),
                Column.figure("posted\n" + currency),
                Column.figure("more\n" + currency));
    }

    private void foot(TableRows table, List<AfterLine> lines) {
        Money quoted = Money.ZERO;
        Money posted = Money.ZERO;
        Money price = Money.ZERO;
        for (AfterLine line : lines) {
            quoted = quoted.plus(line.quotedCost());
            posted = posted.plus(line.postedCost());
            price = price.plus(line.quoted().price());
        }
        row(table, "all costs", quoted, posted);
        row(table, "margin", price.minus(quoted), price.minus(posted));
        table.row(
                "margin, % of the price",
                figures.percent(price.minus(quoted).minor(), price.minor(), 1),
                figures.percent(price.minus(posted).minor(), price.minor(), 1),
                "");
    }

    private void row(TableRows table, String words, Money quoted, Money posted) {
        table.row(words, figures.bare(quoted), figures.bare(posted), figures.bare(posted.minus(quoted)));
    }

    private static String labour(AfterLine line) {
        int timed = line.pieces().timed();
        int ordered = line.pieces().ordered();
        return "Labour, setting up apart: "
                + (line.quoted().allMinutes() == 0
                        ? "none quoted"
                        : BenchWords.time(line.quoted().allMinutes()) + " quoted")
                + ", "
                + (timed == 0
                        ? "none booked" + (line.quoted().allMinutes() == 0 ? "." : ": it counts as quoted.")
                        : BenchWords.time(line.work().minutes()) + " posted; minutes are booked for " + timed + " of "
                                + FindingsPage.count(ordered, "piece")
                                + (timed < ordered ? ", the others count as quoted" : "")
                                + ". Minutes of pieces that were spoiled or spliced again are among them.");
    }

    private void all(Writing page, List<AfterLine> whole) {
        if (whole.size() > 1) {
            page.heading("All lines that are cut whole");
            TableRows table = money();
            foot(table, whole);
            page.tableApart(table);
        }
    }
}
