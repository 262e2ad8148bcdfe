package bitterend.report;

import bitterend.buying.Advice;
import bitterend.buying.Aim;
import bitterend.buying.Assumed;
import bitterend.buying.Orders;
import bitterend.buying.Purchase;
import bitterend.buying.Shortage;
import bitterend.buying.Spending;
import bitterend.buying.Tie;
import bitterend.buying.Unheld;
import bitterend.buying.Way;
import bitterend.market.LeftOut;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What to buy for the orders in hand. */
public final class BuyAdvicePage {
    private final Figures figures;
    private final BuyWords words;

    public BuyAdvicePage(Figures figures) {
        this.figures = figures;
        words = new BuyWords(figures, List.of());
    }

    /**
     * The page of a shop.
     *
     * @param assumed what the advice rests on
     * @param until how far ahead it was looked where rope is short
     * @param ropes where it is
     */
    public Document of(
            String shop, Orders orders, Advice advice, Assumed assumed, LocalDate until, List<Shortage> ropes) {
        Writing page = new Writing();
        page.heading(
                shop + ": reels to buy for the orders in hand, " + orders.day().day());
        BuyWaysBlock ways = new BuyWaysBlock(figures, words, orders, advice, assumed);
        page.paragraph(act(orders, advice, assumed.spending()) + ways.proof());
        unpaid(page, advice);
        if (advice.ties().size() == 1) {
            page.paragraph(tie(orders, advice.ties().get(0)));
        }
        ways.write(page);
        next(page, orders, advice);
        ties(page, orders, advice);
        troubles(page, orders, advice);
        new ShortagePage(figures).section(page, until, ropes);
        new BuyAssumed(figures).write(page, orders, assumed, others(orders, advice));
        return page.document();
    }

    private String act(Orders orders, Advice advice, Spending spending) {
        Purchase act = advice.act();
        if (advice.findRecommended().isEmpty()) {
            return beyond(orders, advice, spending);
        }
        if (act.set().reels() == 0) {
            return nothing(orders, advice);
        }
        return "Order " + words.briefly(act.set(), orders) + " for " + figures.money(act.paid()) + called(advice)
                + ". What is left of " + (act.set().reels() == 1 ? "it" : "them") + " afterwards is worth "
                + figures.money(act.left())
                + ". With what is taken off the rack and the work at the bench, the orders for"
                + " rope that is offered cost " + figures.money(act.cost()) + ".";
    }

    /** Why nothing is bought: nothing needs to be, or nothing on offer would do for what is wanting. */
    private static String nothing(Orders orders, Advice advice) {
        Set<String> without = new HashSet<>(advice.act().unplanned());
        advice.unheld().forEach(unheld -> without.add(unheld.piece()));
        if (without.isEmpty()) {
            return "Buy nothing: the rack and the rope on order hold every piece.";
        }
        String stay = without.size() == 1 ? "1 piece stays" : without.size() + " pieces stay";
        boolean others = orders.day().pieces().stream().anyMatch(piece -> !without.contains(piece.id()));
        return "Nothing can be bought: " + stay + " without rope, and no offer would do for "
                + (without.size() == 1 ? "it" : "them") + "."
                + (others ? " The rack and the rope on order hold every other piece." : "");
    }

    /** What the recommended way is. */
    private static String called(Advice advice) {
        Way way = advice.findRecommended().orElseThrow();
        boolean tied = !advice.ties().isEmpty() && way.aims().contains(Aim.LEAST_COST);
        String within = advice.tooLong().isEmpty() || !way.overWeeks().isEmpty() ? "" : " within the weeks";
        if (!tied) {
            return (advice.ways().size() == 1
                            ? ": the least paid and the least cost alike"
                            : ": the " + BuyWayWords.name(advice, way))
                    + within;
        }
        return ": " + (advice.ways().size() == 1 ? "the least paid, and " : "") + "but for "
                + (advice.ties().size() == 1 ? "a tie" : "ties") + " the least cost" + within;
    }

    /** What the budget can pay for, where it is below the least paid. */
    private String beyond(Orders orders, Advice advice, Spending spending) {
        Way least = advice.ways().get(0);
        Purchase act = advice.act();
        return "The budget of " + figures.money(spending.budget().fine())
                + " does not pay for all orders: the least paid comes to "
                + figures.money(least.purchase().paid()) + ", " + figures.money(least.overBudget()) + " above it. "
                + (act.set().reels() == 0
                        ? "It pays for no reel of the work that comes first."
                        : "The most urgent work first, order " + words.briefly(act.set(), orders) + " for "
                                + figures.money(act.paid()) + ". What is left of "
                                + (act.set().reels() == 1 ? "it" : "them") + " afterwards is worth "
                                + figures.money(act.left()) + ".");
    }

    private String tie(Orders orders, Tie tie) {
        return "A tie: " + words.change(tie.taken(), tie.cheaper(), orders) + " would cost "
                + figures.money(tie.difference()) + " less and pay " + figures.money(tie.saved())
                + " more. The difference of " + figures.money(tie.difference()) + " lies inside what is unproven of "
                + words.ropes(tie.taken(), tie.cheaper(), orders) + " alone (" + figures.atMost(tie.unproven())
                + "), so the least paid is taken.";
    }

    /** Several ties, a row each. */
    private void ties(Writing page, Orders orders, Advice advice) {
        if (advice.ties().size() < 2) {
            return;
        }
        String currency = figures.currency().currency();
        page.heading("Ties");
        TableRows table = new TableRows(
                Column.words("Other reels"),
                Column.figure("cost\nless,\n" + currency),
                Column.figure("pay\nmore,\n" + currency),
                Column.figure("unproven,\n" + currency));
        for (Tie tie : advice.ties()) {
            table.row(
                    words.change(tie.taken(), tie.cheaper(), orders),
                    words.bare(tie.difference()),
                    words.bare(tie.saved()),
                    words.bare(tie.unproven()));
        }
        page.table(table);
        page.paragraph(
                "What each would cost less lies inside what is unproven of its rope alone, so the least paid is taken.");
    }

    /** What has no rope if no more is paid than may be. */
    private static void unpaid(Writing page, Advice advice) {
        if (advice.unpaid().isEmpty()) {
            return;
        }
        Map<String, Long> byLine = advice.unpaid().stream()
                .collect(Collectors.groupingBy(
                        piece -> piece.contains(".") ? piece.substring(0, piece.lastIndexOf('.')) : piece,
                        java.util.LinkedHashMap::new,
                        Collectors.counting()));
        page.paragraph("These stay without rope then: "
                + byLine.entrySet().stream()
                        .map(line -> line.getKey() + " (" + line.getValue()
                                + (line.getValue() == 1 ? " piece)" : " pieces)"))
                        .collect(Collectors.joining(", "))
                + ".");
    }

    private void next(Writing page, Orders orders, Advice advice) {
        if (!advice.allCompared()) {
            page.paragraph("There was no time to look for every set; a longer --time may find a nearer one.");
        }
        List<Purchase> others = advice.next().stream()
                .filter(next -> advice.ways().stream()
                        .noneMatch(way -> way.purchase().set().equals(next.set())))
                .toList();
        if (others.isEmpty()) {
            return;
        }
        page.heading("Next best");
        TableRows table = new TableRows(
                Column.words("Other sizes"),
                Column.figure("costs more,\n" + figures.currency().currency()),
                Column.figure("paid,\n" + figures.currency().currency()));
        for (Purchase next : others) {
            table.row(
                    words.change(advice.best().set(), next.set(), orders),
                    words.bare(next.cost().minus(advice.best().cost())),
                    words.bare(next.paid()));
        }
        page.table(table);
        page.paragraph("Costs more than the least cost of all; paid is for all reels together.");
    }

    private static List<LeftOut> others(Orders orders, Advice advice) {
        List<LeftOut> told = advice.leftOut(orders);
        return orders.leftOut().stream().filter(each -> !told.contains(each)).toList();
    }

    private void troubles(Writing page, Orders orders, Advice advice) {
        boolean none = advice.unheld().isEmpty()
                && advice.late().isEmpty()
                && advice.best().unplanned().isEmpty()
                && advice.leftOut(orders).isEmpty();
        if (none) {
            return;
        }
        page.heading("What cannot be had");
        advice.unheld().stream()
                .collect(Collectors.groupingBy(
                        unheld -> figures.sentence(unheld.why()),
                        java.util.LinkedHashMap::new,
                        Collectors.mapping(Unheld::piece, Collectors.joining(", "))))
                .forEach((why, pieces) -> page.paragraph(pieces + ": " + why + "."));
        if (!advice.best().unplanned().isEmpty()) {
            page.paragraph("Not enough rope is offered for "
                    + String.join(", ", advice.best().unplanned()) + ".");
        }
        if (!advice.late().isEmpty()) {
            page.paragraph("Rope comes after the due day for " + String.join(", ", advice.late()) + ".");
        }
        for (LeftOut.Why why : LeftOut.Why.values()) {
            List<LeftOut> out = advice.leftOut(orders).stream()
                    .filter(each -> each.why() == why)
                    .toList();
            if (!out.isEmpty()) {
                page.paragraph(BuyBillWords.leftOut(why, out));
            }
        }
    }
}
