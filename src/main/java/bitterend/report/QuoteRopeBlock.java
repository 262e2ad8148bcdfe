package bitterend.report;

import bitterend.catalogue.Catalogue;
import bitterend.catalogue.Rope;
import bitterend.measure.Coins;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.quoting.RopeQuote;
import bitterend.quoting.WasteBasis;
import bitterend.quoting.WasteView;
import bitterend.quoting.sharing.Factor;
import bitterend.quoting.sharing.RopeShares;
import bitterend.quoting.sharing.Stability;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import org.apache.commons.math3.fraction.BigFraction;

/** The rope of a quote: what is drawn, the waste seen in three ways, and how its cost is shared among the lines. */
final class QuoteRopeBlock {
    /** A hundredth of the smallest coin, in thousandths of it: shares are printed to that. */
    private static final int PRINTED = 10;

    private final Figures figures;
    private final RopeQuote rope;

    QuoteRopeBlock(Figures figures, RopeQuote rope) {
        this.figures = figures;
        this.rope = rope;
    }

    void write(Writing page, Catalogue catalogue) {
        String name = catalogue.findRope(rope.rope()).map(Rope::name).orElse(rope.rope());
        page.heading(rope.rope() + ", " + name);
        page.tableApart(lengths());
        page.tableApart(views());
        for (WasteBasis basis : WasteBasis.values()) {
            if (rope.waste().of(basis) instanceof WasteView.NotKnown unknown) {
                page.paragraph("Waste " + basis.word() + ": not known, since " + unknown.reason() + ".");
            }
        }
        page.paragraph("Charged: waste " + rope.charged().basis().word() + ", "
                + figures.money(rope.charged().total()) + " for rope, waste and reel handling together. Alone:"
                + " cut by itself from new reels that can be had so, what is left going back to the rack at its"
                + " value. Marginal: what it adds to the booked work on today's rack. Usual: what it would have"
                + " added to past weeks.");
        page.paragraph("Rope in the pieces: " + figures.money(rope.worth()) + " at "
                + new BuyWords(figures, List.of()).price(rope.price())
                + (rope.buying().isAtRopesPrice()
                        ? ", the price of the rope itself."
                        : ", what the cheapest of the reels taken comes to with its freight. The price of the rope itself"
                                + " decides only what a leftover is worth: never more than was paid for it."));
        if (rope.charged().total().compareTo(rope.worth()) < 0) {
            page.paragraph(
                    "What is charged is less than that: waste is below nothing, and no line is held to its" + " rope.");
        }
        if (rope.waste().usual() instanceof WasteView.Span usual) {
            page.paragraph(PastWeekWords.of(usual.weeks()));
        }
    }

    private TableRows lengths() {
        TableRows table = new TableRows(
                Column.words("cut from new reels"),
                Column.figure(figures.unit()),
                Column.figure("of the rope\ndrawn, %"));
        length(table, "finished", rope.finished());
        length(table, "cut", rope.book().pieces());
        length(table, "cut loss", rope.book().cutLoss());
        length(table, "scrap", rope.book().scrap());
        length(table, "drawn", rope.book().drawn());
        return table;
    }

    private void length(TableRows table, String words, Length length) {
        table.row(
                words,
                figures.bare(length),
                figures.percent(length.mm(), rope.book().drawn().mm(), 1));
    }

    private TableRows views() {
        String currency = figures.currency().currency();
        TableRows table = new TableRows(
                Column.words("waste"),
                Column.figure("least\n" + currency),
                Column.figure("found, mean\n" + currency),
                Column.figure("most\n" + currency),
                Column.figure("of the rope\nin pieces, %"),
                Column.figure("looked at"));
        for (WasteBasis basis : WasteBasis.values()) {
            if (rope.waste().of(basis) instanceof WasteView.Span span) {
                table.row(
                        basis.word(),
                        figures.bare(rope.inCoins(span.low())),
                        figures.bare(rope.inCoins(span.middle())),
                        figures.bare(rope.inCoins(span.high())),
                        figures.percent(span.middle().millis(), rope.worth().millis(), 1),
                        basis == WasteBasis.USUAL ? FindingsPage.count(span.samples(), "week") : "once");
            }
        }
        return table;
    }

    /** How the cost of cutting the lines alone is shared, and what may be said of that. */
    void sharing(Writing page) {
        RopeShares shares = rope.shares();
        boolean one = rope.lines().size() == 1;
        if (!one) {
            page.tableApart(shareTable(shares));
        }
        if (!one) {
            page.paragraph("Alone, a group of lines is cut from new reels of these same sizes at these same prices.");
        }
        page.paragraph("Rope, waste and reel handling of " + (one ? "this line" : "these lines") + ", cut by "
                + (one ? "itself, come to " : "themselves, come to ")
                + figures.money(shares.cost())
                + (shares.isProvenBest()
                        ? ", proven the least."
                        : "; no cutting costs less than " + figures.money(shares.proven()) + "."));
        if (!one) {
            page.paragraph(shares.factor().map(QuoteRopeBlock::promise).orElse("Shared by length."));
            page.paragraph(verdict(shares));
        }
    }

    private static String promise(Factor factor) {
        BigDecimal over =
                new BigDecimal(factor.printed()).subtract(BigDecimal.ONE).movePointRight(2);
        return "By dual prices no group of lines pays "
                + (over.signum() == 0
                        ? "more than it would alone (factor 1)."
                        : "over " + over.stripTrailingZeros().toPlainString() + " % more than alone.");
    }

    private String verdict(RopeShares shares) {
        if (shares.stability() instanceof Stability.Stable) {
            return "Stable: with the split above no group of lines would be cheaper alone.";
        }
        if (shares.stability() instanceof Stability.NoneExists none) {
            return "No stable split exists: " + objections(none) + " would pay " + exact(none.together())
                    + " alone, less than the " + figures.money(shares.cost()) + " of all.";
        }
        return "Whether a stable split exists is not known: " + ((Stability.NotKnown) shares.stability()).reason()
                + ".";
    }

    private static String objections(Stability.NoneExists none) {
        List<String> groups = none.groups().stream()
                .map(group -> (group.weight().equals(BigFraction.ONE) ? "" : group.weight() + " of ")
                        + (group.parties().size() == 1 ? "line " : "lines ")
                        + String.join(" with ", group.parties()))
                .toList();
        return String.join(", ", groups) + " together";
    }

    private TableRows shareTable(RopeShares shares) {
        String currency = figures.currency().currency();
        TableRows table = new TableRows(
                Column.words("line"),
                Column.figure("by dual prices\n" + currency),
                Column.figure("stable\n" + currency),
                Column.figure("pays\n" + currency));
        BigFraction cost = new BigFraction(BigInteger.valueOf(shares.cost().millis()));
        List<String> byDuals = exact(cost, shares.byDuals());
        boolean stable = shares.stability() instanceof Stability.Stable;
        List<String> split =
                shares.stability() instanceof Stability.Stable found ? exact(cost, found.shares()) : List.of();
        for (int i = 0; i < rope.lines().size(); i++) {
            table.row(
                    rope.lines().get(i),
                    byDuals.get(i),
                    stable ? split.get(i) : "-",
                    figures.bare(rope.charged().byLine().get(i)));
        }
        Money paid = rope.charged().byLine().stream().reduce(Money.ZERO, Money::plus);
        table.row("all", exact(cost), stable ? exact(cost) : "", figures.bare(paid));
        return table;
    }

    /** Exact shares of a cost to two digits beyond the smallest coin, which add up to it as it is printed beside them. */
    private List<String> exact(BigFraction all, List<BigFraction> millis) {
        List<BigFraction> shares =
                millis.stream().map(share -> share.divide(PRINTED)).toList();
        return Coins.whole(Coins.nearest(all.divide(PRINTED)), shares).stream()
                .map(this::digits)
                .toList();
    }

    private String exact(BigFraction millis) {
        return digits(Coins.nearest(millis.divide(PRINTED)));
    }

    private String digits(long hundredthsOfACoin) {
        return BigDecimal.valueOf(hundredthsOfACoin, figures.currency().minorDigits() + 2)
                .toPlainString();
    }
}
