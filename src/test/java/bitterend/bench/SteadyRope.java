package bitterend.bench;

import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.measure.Cost;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.UnitPrice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * One rope with a known process of orders, invented and fixed before any run: in a week there are so many orders on the
 * average, each of a length between two and of one to so many pieces.
 *
 * @param name what kind of work it is
 * @param reels sizes that are bought, in metres
 * @param dearer per cent that each size costs more by the metre than the last one
 * @param shortest of a piece, in metres
 * @param longest of a piece
 * @param orders a week, in hundredths
 * @param most pieces of an order
 */
record SteadyRope(String name, List<Integer> reels, int dearer, double shortest, double longest, int orders, int most) {
    static final String ID = "W";
    private static final UnitPrice PRICE = new UnitPrice(310_000);
    private static final int STANDARD_LENGTHS = 6;

    static List<SteadyRope> all() {
        return List.of(
                new SteadyRope("short", List.of(200), 0, 1, 8, 600, 4),
                new SteadyRope("mixed", List.of(200), 0, 2, 40, 150, 3),
                new SteadyRope("medium", List.of(200), 0, 8, 30, 120, 3),
                new SteadyRope("long", List.of(200), 0, 25, 75, 70, 3),
                new SteadyRope("half-reel", List.of(100), 0, 25, 48, 100, 2),
                new SteadyRope("lumpy", List.of(200), 0, 4, 16, 25, 12),
                new SteadyRope("rare", List.of(200), 0, 5, 35, 20, 2),
                new SteadyRope("fast", List.of(300), 0, 3, 45, 400, 3),
                new SteadyRope("short+long", List.of(200), 0, -2, 60, 150, 2),
                new SteadyRope("standard", List.of(200), 0, 6, 42, 200, 2),
                new SteadyRope("two-sizes", List.of(100, 220), 6, 3, 40, 250, 2),
                new SteadyRope("three-sizes", List.of(60, 110, 220), 6, 4, 36, 120, 2));
    }

    Rope rope() {
        return new Rope(
                ID,
                "12 mm double braid",
                new RopeIdentity(
                        Kinds.DOUBLE_BRAID,
                        Kinds.POLYESTER,
                        "",
                        "",
                        Diameter.ofMillimetres(12),
                        Lay.NONE,
                        "",
                        "white",
                        ""),
                new LinearMass(100_000),
                PRICE,
                new Rope.Cutting(new Length(10), new Length(10)),
                new Rope.Worth(shortestPiece(), new Length(usual().mm() / 2)),
                usual());
    }

    /** Nobody keeps a coil that holds no piece. */
    private Length shortestPiece() {
        return new Length(Math.round(Math.abs(shortest) * 1000));
    }

    /** The size that is cheapest by the metre. */
    Length usual() {
        return Length.ofMetres(reels.get(reels.size() - 1));
    }

    /** What a reel of a size costs: the smaller, the dearer by the metre. */
    Cost paid(int size) {
        Cost bare = PRICE.of(Length.ofMetres(reels.get(size)));
        return bare.plus(new Cost(bare.millis() * dearer * (reels.size() - 1 - size) / 100));
    }

    UnitPrice price() {
        return PRICE;
    }

    /** The cut lengths of the weeks of one draw, in the order in which they were ordered. */
    List<List<Length>> weeks(int draw, int weeks) {
        SplittableRandom random = new SplittableRandom(name.hashCode() * 1_000_003L + draw);
        List<List<Length>> all = new ArrayList<>();
        for (int week = 0; week < weeks; week++) {
            List<Length> pieces = new ArrayList<>();
            for (int order = orders(random); order > 0; order--) {
                Length length = length(random);
                int count = most > 4 ? most / 2 + random.nextInt(most) : 1 + random.nextInt(most);
                for (int piece = 0; piece < count; piece++) {
                    pieces.add(length);
                }
            }
            all.add(pieces);
        }
        return all;
    }

    private int orders(SplittableRandom random) {
        double left = Math.exp(-orders / 100.0);
        int count = -1;
        for (double product = 1; product > left; count++) {
            product *= random.nextDouble();
        }
        return count;
    }

    /** Even between shortest and longest; below 0: short ones and long ones alone; "standard": a few lengths. */
    private Length length(SplittableRandom random) {
        double from = Math.abs(shortest);
        double share = random.nextDouble();
        if (shortest < 0) {
            share = random.nextInt(4) == 0 ? 0.7 + 0.3 * share : 0.1 * share;
        }
        if (name.equals("standard")) {
            share = (int) (share * STANDARD_LENGTHS) / (double) STANDARD_LENGTHS;
        }
        return new Length(Math.round((from + share * (longest - from)) * 100) * 10);
    }

    static List<Length> longestFirst(List<Length> pieces) {
        return pieces.stream().sorted(Comparator.reverseOrder()).toList();
    }
}
