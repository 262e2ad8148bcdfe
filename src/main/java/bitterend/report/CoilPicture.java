package bitterend.report;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilValue;
import java.util.StringJoiner;

/** The curve of what coils are worth, drawn: today's, that of an empty rack, and the price of new rope. */
final class CoilPicture {
    private static final int WIDTH = 720;
    private static final int HEIGHT = 350;
    private static final int LEFT = 70;
    private static final int RIGHT = 700;
    private static final int TOP = 40;
    private static final int BOTTOM = 300;
    private static final int POINTS = 200;

    private final BuyWords words;

    CoilPicture(BuyWords words) {
        this.words = words;
    }

    String of(String rope, CoilValue value) {
        String title = rope + ": worth of a coil by its length; line: today, grey: an empty rack, dashed: new rope";
        Length longest = value.terms().reel();
        Cost dearest = value.unopened(longest);
        BuyAxis along = BuyAxis.holding(0, longest.mm(), LEFT, RIGHT);
        BuyAxis up = BuyAxis.holding(0, Math.max(1, dearest.millis()), BOTTOM, TOP);
        BuySvg svg = new BuySvg(WIDTH, HEIGHT, title).text(LEFT, 18, "start", title);
        for (long tick : up.ticks()) {
            svg.line(LEFT, up.place(tick), RIGHT, up.place(tick), BuySvg.SOFT);
            svg.text(LEFT - 8, up.place(tick) + 4, "end", words.bare(new Cost(tick)));
        }
        svg.area(points(value.on(Length.ZERO), longest, along, up) + " " + along.place(longest.mm()) + "," + BOTTOM);
        svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, BuySvg.INK);
        svg.dashed(LEFT, BOTTOM, along.place(longest.mm()), up.place(dearest.millis()));
        svg.polyline(points(value, longest, along, up));
        along.ticks()
                .forEach(tick -> svg.text(along.place(tick), BOTTOM + 20, "middle", words.shortly(new Length(tick))));
        return svg.toString();
    }

    private static String points(StockValue value, Length longest, BuyAxis along, BuyAxis up) {
        StringJoiner points = new StringJoiner(" ");
        for (int point = 0; point <= POINTS; point++) {
            long mm = longest.mm() * point / POINTS;
            points.add(along.place(mm) + "," + up.place(value.of(new Length(mm)).millis()));
        }
        return points.toString();
    }
}
