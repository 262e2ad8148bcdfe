package bitterend.report;

import bitterend.buying.Advice;
import bitterend.buying.Purchase;
import bitterend.buying.Spending;
import bitterend.buying.Way;
import bitterend.measure.Cost;
import java.util.List;

/** Money paid now against cost, a dot for each way; the recommended one is filled. */
final class BuyWaysPicture {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 250;
    private static final int LEFT = 90;
    private static final int RIGHT = 600;
    private static final int TOP = 40;
    private static final int BOTTOM = 200;
    private static final int ABOVE = 7;
    private static final int TALL = 10;

    private final Figures figures;
    private final Advice advice;
    private final Spending spending;

    BuyWaysPicture(Figures figures, Advice advice, Spending spending) {
        this.figures = figures;
        this.advice = advice;
        this.spending = spending;
    }

    String svg() {
        List<Purchase> all = advice.ways().stream().map(Way::purchase).toList();
        String title = "Cost against money paid now, " + figures.currency().currency();
        BuySvg svg = new BuySvg(WIDTH, HEIGHT, title).text(LEFT, 18, "start", title + "; filled: recommended");
        BuyAxis along = axis(all.stream().map(Purchase::paid).toList(), LEFT, RIGHT);
        BuyAxis up = axis(all.stream().map(Purchase::cost).toList(), BOTTOM, TOP);
        for (long tick : up.ticks()) {
            svg.line(LEFT, up.place(tick), RIGHT, up.place(tick), BuySvg.SOFT);
            svg.text(LEFT - 8, up.place(tick) + 4, "end", coins(tick));
        }
        svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, BuySvg.INK);
        along.ticks().forEach(tick -> svg.text(along.place(tick), BOTTOM + 20, "middle", coins(tick)));
        svg.text(RIGHT, BOTTOM + 40, "end", "paid now");
        budget(svg, along);
        for (Way way : advice.ways()) {
            long x = along.place(way.purchase().paid().millis());
            long y = up.place(way.purchase().cost().millis());
            svg.dot(x, y, advice.findRecommended().filter(way::equals).isEmpty());
            boolean far = x > (LEFT + RIGHT) / 2;
            svg.text(far ? x - 9 : x + 9, beside(y, up), far ? "end" : "start", BuyWayWords.name(advice, way));
        }
        return svg.toString();
    }

    /** Above a dot, or below it where a line would go through the words. */
    private static long beside(long y, BuyAxis up) {
        boolean struck =
                up.ticks().stream().map(up::place).anyMatch(line -> line > y - ABOVE - TALL && line < y - ABOVE + 2);
        return struck ? y + ABOVE + TALL : y - ABOVE;
    }

    private void budget(BuySvg svg, BuyAxis along) {
        if (!spending.hasBudget()) {
            return;
        }
        long budget = spending.budget().fine().millis();
        if (budget >= along.from() && budget <= along.to()) {
            svg.dashed(along.place(budget), TOP, along.place(budget), BOTTOM);
            svg.text(along.place(budget) + 5, TOP + 10, "start", "budget");
        }
    }

    /** A tenth of the span free at either end, and some even where there is none. */
    private static BuyAxis axis(List<Cost> amounts, long start, long end) {
        long least = amounts.stream().mapToLong(Cost::millis).min().orElse(0);
        long most = amounts.stream().mapToLong(Cost::millis).max().orElse(1);
        long free = Math.max((most - least) / 8, Math.max(Math.abs(most) / 100, 1));
        return BuyAxis.holding(least - free, most + free, start, end);
    }

    private String coins(long millis) {
        return figures.bare(new Cost(millis).rounded());
    }
}
