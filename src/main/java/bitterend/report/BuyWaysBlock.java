package bitterend.report;

import bitterend.buying.Advice;
import bitterend.buying.Assumed;
import bitterend.buying.Cover;
import bitterend.buying.Orders;
import bitterend.buying.Purchase;
import bitterend.buying.ReelLine;
import bitterend.buying.Way;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Cost;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** The ways to buy side by side: what each pays, what it costs, what is left of it and how long that lasts. */
final class BuyWaysBlock {
    private final Figures figures;
    private final BuyWords words;
    private final Orders orders;
    private final Advice advice;
    private final Assumed assumed;

    BuyWaysBlock(Figures figures, BuyWords words, Orders orders, Advice advice, Assumed assumed) {
        this.figures = figures;
        this.words = words;
        this.orders = orders;
        this.advice = advice;
        this.assumed = assumed;
    }

    void write(Writing page) {
        boolean several = advice.ways().size() > 1;
        if (several) {
            page.heading("Ways to buy");
            table(page);
            page.picture(new BuyWaysPicture(figures, advice, assumed.spending()).svg());
        }
        advice.ways().forEach(way -> over(page, way));
        covers(page);
        Way first = advice.findRecommended().orElse(advice.ways().get(0));
        lines(page, first, List.of(), advice.findRecommended().isPresent() ? "To order" : BuyWayWords.begun(first));
        for (Way way : advice.ways()) {
            if (!way.equals(first)) {
                lines(page, way, first.purchase().lines(), BuyWayWords.begun(way));
            }
        }
    }

    private void table(Writing page) {
        String currency = figures.currency().currency();
        TableRows table = new TableRows(
                Column.words("way"),
                Column.figure("paid,\n" + currency),
                Column.figure("freight\nin it"),
                Column.figure("cost,\n" + currency),
                Column.figure("left,\n" + figures.unit()),
                Column.figure("in\ncoils"),
                Column.figure("worth,\n" + currency));
        for (Way way : advice.ways()) {
            Purchase purchase = way.purchase();
            table.row(
                    BuyWayWords.name(way)
                            + (advice.findRecommended().filter(way::equals).isPresent() ? " *" : ""),
                    words.bare(purchase.paid()),
                    words.bare(purchase.bill().freight()),
                    words.bare(purchase.cost()),
                    figures.bareTotal(purchase.rest().metres()),
                    Integer.toString(purchase.rest().coils()),
                    words.bare(purchase.left()));
        }
        page.table(table);
        page.paragraph((advice.findRecommended().isPresent() ? "* is recommended. " : "")
                + "Paid is the money that suppliers get now. Cost is that money less the worth of what is left of the new"
                + " reels, with the worth drawn from the rack and the work at the bench.");
    }

    private void over(Writing page, Way way) {
        String name = advice.ways().size() == 1 ? "This" : BuyWayWords.begun(way);
        if (way.overBudget().millis() > 0) {
            page.paragraph(name + " is above the budget of "
                    + figures.money(assumed.spending().budget().fine()) + " by " + figures.money(way.overBudget())
                    + ".");
        }
        for (String rope : way.overWeeks()) {
            Cover cover = way.covers().stream()
                    .filter(each -> each.rope().equals(rope))
                    .findFirst()
                    .orElseThrow();
            page.paragraph(name + " is over the weeks: " + rope + " would last " + words.tenths(cover.tenths())
                    + " weeks, and " + assumed.spending().mostWeeks() + " are the most"
                    + (advice.ways().size() == 1 ? "; no way that serves the orders has fewer." : "."));
        }
    }

    private void covers(Writing page) {
        SortedSet<String> ropes = new TreeSet<>(NaturalOrder.IDS);
        advice.ways().forEach(way -> way.covers().forEach(cover -> ropes.add(cover.rope())));
        if (ropes.isEmpty()) {
            return;
        }
        page.heading("How many weeks rope lasts then");
        List<Column> columns = new ArrayList<>();
        columns.add(Column.words("rope"));
        columns.add(Column.figure("a week,\n" + figures.unit()));
        advice.ways()
                .forEach(way -> columns.add(Column.figure(
                        advice.ways().size() == 1
                                ? "weeks"
                                : BuyWayWords.name(way).replace(" and ", "\nand "))));
        TableRows table = new TableRows(columns.toArray(Column[]::new));
        for (String rope : ropes) {
            List<String> cells = new ArrayList<>();
            cells.add(rope);
            Cover any = advice.ways().stream()
                    .flatMap(way -> find(way, rope).stream())
                    .findFirst()
                    .orElseThrow();
            cells.add(any.isKnown() ? figures.bareTotal(any.weekly()) : "not known");
            advice.ways()
                    .forEach(way -> cells.add(find(way, rope)
                            .map(cover -> cover.isKnown() ? words.tenths(cover.tenths()) : "not known")
                            .orElse("")));
            table.row(cells.toArray(String[]::new));
        }
        page.table(table);
        page.paragraph(
                "Free rope on the rack, on order and bought, less what the orders in hand take, by what work took of"
                        + " it in a week of the past. A way that buys none of a rope has no figure there.");
    }

    private static Optional<Cover> find(Way way, String rope) {
        return way.covers().stream().filter(cover -> cover.rope().equals(rope)).findFirst();
    }

    private void lines(Writing page, Way way, List<ReelLine> before, String heading) {
        if (way.purchase().lines().isEmpty()) {
            return;
        }
        page.heading(heading);
        BuyLineWords each = new BuyLineWords(figures, words, orders);
        for (ReelLine line : way.purchase().lines()) {
            if (!before.contains(line)) {
                page.paragraph(each.line(line));
                page.paragraph(1, each.need(line));
            }
        }
        if (way.purchase().lines().stream().anyMatch(before::contains)) {
            page.paragraph("The other reels as above.");
        }
        BuyBillWords bill = new BuyBillWords(figures);
        bill.orders(way.bill()).forEach(page::paragraph);
        bill.objections(way.bill()).forEach(page::caution);
    }

    /** What is proven of the least paid and of the least cost, where anything is bought. */
    String proof() {
        Purchase least = advice.ways().get(0).purchase();
        return least.set().reels() == 0 ? "" : paid(least) + cost(advice.act());
    }

    private String paid(Purchase least) {
        return least.paid().compareTo(advice.paidBound()) <= 0
                ? " Proven: no way pays less than " + figures.money(least.paid()) + "."
                : " Proven: no way pays less than " + figures.atLeast(advice.paidBound()) + ".";
    }

    private String cost(Purchase best) {
        if (best.isProven()) {
            return " Proven: no other set costs less.";
        }
        return best.bound().equals(Cost.ZERO)
                ? " Nothing is proven about how much less another set could cost."
                : " Proven: no set costs less than " + figures.atLeast(best.bound()) + ", so at most "
                        + figures.atMost(best.unproven()) + " could be saved.";
    }
}
