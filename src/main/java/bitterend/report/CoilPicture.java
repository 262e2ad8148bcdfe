package bitterend.report;

import bitterend.measure.Length;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilValue;
import java.util.List;
import java.util.StringJoiner;

/**
 * What short coils are worth, drawn as a share of the price of new rope: today's curve, that of an empty rack, and the length
 * from which on coils are kept. Long coils, where the curve is all but level, are left out.
 */
final class CoilPicture {
    private static final int WIDTH = 720;
    private static final int HEIGHT = 350;
    private static final int LEFT = 70;
    private static final int RIGHT = 700;
    private static final int TOP = 50;
    private static final int BOTTOM = 300;
    private static final int POINTS = 300;
    private static final int PER_MILLE = 1_000;
    /** Least part of the usual reel that is drawn, and how often the shortest coil to keep goes into the picture. */
    private static final int PART_OF_REEL = 5;

    private final Figures figures;
    private final BuyWords words;

    CoilPicture(Figures figures) {
        this.figures = figures;
        words = new BuyWords(figures, List.of());
    }

    String of(String rope, CoilValue value) {
        String title =
                rope + ": worth of a coil in % of the price of new rope, by its length; line: today, grey: an empty"
                        + " rack";
        long longest = longest(value);
        CoilValue empty = value.on(Length.ZERO);
        long most = Math.max(PER_MILLE, Math.max(share(value, value, longest), share(empty, value, longest)));
        BuyAxis along = BuyAxis.holding(0, longest, LEFT, RIGHT);
        BuyAxis up = BuyAxis.holding(0, most, BOTTOM, TOP);
        BuySvg svg = new BuySvg(WIDTH, HEIGHT, title).text(LEFT, 18, "start", title);
        for (long tick : up.ticks()) {
            svg.line(LEFT, up.place(tick), RIGHT, up.place(tick), BuySvg.SOFT);
            svg.text(LEFT - 8, up.place(tick) + 4, "end", figures.percent(tick, PER_MILLE, 0) + " %");
        }
        svg.area(points(empty, value, along, up) + " " + along.place(longest) + "," + BOTTOM);
        svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, BuySvg.INK);
        svg.polyline(points(value, value, along, up));
        value.keepFrom().filter(from -> from.mm() <= longest).ifPresent(from -> {
            long place = along.place(from.mm());
            svg.dashed(place, BOTTOM, place, TOP - 8);
            svg.text(place + 4, TOP - 8, "start", "kept from " + figures.length(from));
        });
        along.ticks()
                .forEach(tick -> svg.text(along.place(tick), BOTTOM + 20, "middle", words.shortly(new Length(tick))));
        return svg.toString();
    }

    private static long longest(CoilValue value) {
        long reel = value.terms().reel().mm();
        long from = value.keepFrom().map(Length::mm).orElse(reel);
        return Math.max(1, Math.min(reel, Math.max(reel, from * PART_OF_REEL * PART_OF_REEL) / PART_OF_REEL));
    }

    /** Worth of a coil in thousandths of its price, rounded down. */
    private static long share(StockValue curve, CoilValue today, long mm) {
        long price = today.terms().price().of(new Length(mm)).millis();
        long worth = curve.of(new Length(mm)).millis();
        return price == 0 ? 0 : worth / price * PER_MILLE + worth % price * PER_MILLE / price;
    }

    /** From nothing to the longest; where a coil begins to be worth something both sides of the step are drawn. */
    private static String points(StockValue curve, CoilValue today, BuyAxis along, BuyAxis up) {
        long longest = longest(today);
        long from = curve.keepFrom().map(Length::mm).orElse(longest + 1);
        StringJoiner points = new StringJoiner(" ");
        long before = 0;
        for (int point = 0; point <= POINTS; point++) {
            long mm = longest * point / POINTS;
            if (before < from && from <= mm) {
                points.add(along.place(from) + "," + BOTTOM);
                points.add(along.place(from) + "," + up.place(share(curve, today, from)));
            }
            points.add(along.place(mm) + "," + up.place(share(curve, today, mm)));
            before = mm;
        }
        return points.toString();
    }
}
