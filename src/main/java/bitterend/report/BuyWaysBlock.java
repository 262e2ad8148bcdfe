package bitterend.report;

import bitterend.buying.Advice;
import bitterend.buying.Assumed;
import bitterend.buying.Cover;
import bitterend.buying.Orders;
import bitterend.buying.Purchase;
import bitterend.buying.ReelLine;
import bitterend.buying.TooLong;
import bitterend.buying.Way;
import bitterend.measure.Cost;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

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
        if (advice.shown().size() > 1) {
            page.heading("Ways to buy");
            table(page);
        }
        if (advice.ways().size() > 1) {
            page.picture(new BuyWaysPicture(figures, advice, assumed.spending()).svg());
        }
        over(page);
        ropes(page);
        Way first = advice.acted();
        lines(page, first, List.of(), "To order");
        for (Way way : advice.ways()) {
            if (!way.equals(first)) {
                lines(page, way, first.purchase().lines(), BuyWayWords.begun(advice, way));
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
        for (Way way : advice.shown()) {
            Purchase purchase = way.purchase();
            table.row(
                    BuyWayWords.name(advice, way) + (advice.acted().equals(way) ? " *" : ""),
                    words.bare(purchase.paid()),
                    words.bare(purchase.bill().freight()),
                    advice.findAffordable().filter(way::equals).isPresent() ? "" : words.bare(purchase.cost()),
                    figures.bareTotal(purchase.rest().metres()),
                    Integer.toString(purchase.rest().coils()),
                    words.bare(purchase.left()));
        }
        page.table(table);
        page.paragraph((advice.findRecommended().isPresent()
                        ? "* is recommended. "
                        : "* leaves work without rope, so that its cost is not set beside that of the others. ")
                + "Paid is the money that suppliers get now. Cost is that money less the worth of what is left of the new"
                + " reels, with the worth drawn from the rack and the work at the bench.");
    }

    /** What goes beyond what the shop may spend. */
    private void over(Writing page) {
        for (Way way : advice.ways()) {
            if (way.overBudget().millis() > 0 && advice.findRecommended().isPresent()) {
                page.paragraph(BuyWayWords.begun(advice, way) + " is above the budget of "
                        + figures.money(assumed.spending().budget().fine()) + " by " + figures.money(way.overBudget())
                        + ".");
            }
        }
        String longer = advice.acted().covers().stream()
                .filter(cover -> advice.acted().overWeeks().contains(cover.rope()))
                .map(cover -> cover.rope() + " " + words.tenths(cover.tenthsRoundedUp()))
                .collect(Collectors.joining(", "));
        if (!longer.isEmpty()) {
            page.paragraph("Above the most weeks, " + assumed.spending().mostWeeks()
                    + ", since no way that serves the orders leaves less of it: " + longer + ".");
        }
        for (TooLong each : advice.tooLong()) {
            page.paragraph("Not offered: " + words.set(each.set(), orders) + " would cost "
                    + figures.money(each.saved())
                    + " less, but " + each.rope() + " would last " + words.tenths(each.tenths()) + " weeks then, and "
                    + assumed.spending().mostWeeks() + " are the most.");
        }
    }

    private void ropes(Writing page) {
        List<BuyRow> rows = BuyRow.of(advice);
        if (rows.isEmpty()) {
            return;
        }
        boolean several = advice.shown().size() > 1;
        page.heading("Rope by rope");
        List<Column> columns = new ArrayList<>(List.of(Column.words("rope")));
        if (several) {
            columns.add(Column.words("way"));
        }
        columns.addAll(List.of(
                Column.words("reels"),
                Column.figure("paid,\n" + figures.currency().currency()),
                Column.figure("free\nthen, " + figures.unit()),
                Column.figure("used a\nweek, " + figures.unit()),
                Column.figure("weeks")));
        TableRows table = new TableRows(columns.toArray(Column[]::new));
        for (BuyRow row : rows) {
            List<String> cells = new ArrayList<>(List.of(row.rope()));
            if (several) {
                cells.add(ways(row));
            }
            Cover cover = row.cover();
            cells.addAll(List.of(
                    row.reels().replace(" x ", "\u00a0x\u00a0"),
                    row.paid().minor() == 0 ? "" : figures.bare(row.paid()),
                    row.isBought() ? figures.bareTotal(cover.left()) : "",
                    used(row),
                    !row.isBought() ? "" : cover.isKnown() ? words.tenths(cover.tenths()) : "not known"));
            table.row(cells.toArray(String[]::new));
        }
        page.table(table);
        page.paragraph("Free then: free rope on the rack, on order and bought, less what the orders in hand take."
                + " Weeks: that by what work took of it in a week of the past, rounded down."
                + (rows.stream().anyMatch(row -> !row.isRope())
                        ? " Paid is with the freight by reel and weight that is charged; other freight is by order, and the"
                                + " coin to which freight by weight is rounded up. The rows of a way add up to what it pays."
                        : ""));
    }

    private String used(BuyRow row) {
        Cover cover = row.cover();
        return cover.isKnown() ? figures.bareTotal(cover.weekly()) : row.isRope() ? "not known" : "";
    }

    /** The way to go has a star among the others, as in the table of ways. */
    private String ways(BuyRow row) {
        String acted = BuyWayWords.name(advice, advice.acted());
        return row.ways().size() == advice.shown().size()
                ? "every way"
                : row.ways().stream()
                        .map(name -> name.equals(acted) ? name + " *" : name)
                        .collect(Collectors.joining(", "));
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

    /** What is proven of the least paid and of the recommended way, where anything is bought. */
    String proof() {
        Purchase least = advice.ways().get(0).purchase();
        return least.set().reels() == 0
                ? ""
                : paid(least)
                        + advice.findRecommended()
                                .map(way -> cost(way.purchase()))
                                .orElse("");
    }

    private String paid(Purchase least) {
        return " Proven: no way" + within() + " pays less than "
                + (least.paid().compareTo(advice.paidBound()) <= 0
                        ? figures.money(least.paid())
                        : figures.atLeast(advice.paidBound()))
                + ".";
    }

    /** Where rope may last no longer: what is left out is not spoken of. */
    private String within() {
        if (advice.tooLong().isEmpty()) {
            return "";
        }
        return advice.acted().overWeeks().isEmpty() ? " within the weeks" : " that leaves so little";
    }

    private String cost(Purchase best) {
        if (best.isProven()) {
            return " Proven: no other set" + within() + " costs less.";
        }
        return best.bound().equals(Cost.ZERO)
                ? " Nothing is proven about how much less another set could cost."
                : " Proven: no set" + within() + " costs less than " + figures.atLeast(best.bound()) + ", so at most "
                        + figures.atMost(best.unproven()) + " could be saved, all ropes together.";
    }
}
