package bitterend.bench;

import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.UnitPrice;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * One rope with a known process of orders, invented and fixed before any run.
 *
 * @param name its number and what kind of work it is
 * @param reel metres of a full reel
 * @param price of new rope
 * @param shortest of a piece
 * @param longest of a piece
 * @param lengths how many different ones there are; 0 for any
 * @param orders order lines a day, in thousandths
 * @param most pieces of a line
 */
record WeekRope(
        String name, int reel, UnitPrice price, Length shortest, Length longest, int lengths, int orders, int most) {
    static final String ID = "W";
    static final Length LOSS = new Length(10);

    private static final int RUSH_PERCENT = 20;
    private static final int SOONEST = 2;
    private static final int LATEST = 10;
    private static final int FEW = 3;
    private static final int LUMP = 12;
    private static final int[] REELS = {100, 150, 200, 220, 300};

    /**
     * One ordered piece; days are working days, counted from the first.
     *
     * @param number in the order in which they were placed
     * @param placed the day from whose morning on it is known
     * @param cutBy the day on which it is cut at the latest
     * @param rush whether it was placed at most a day before; the shop takes such work first
     */
    record Ordered(int number, int placed, int cutBy, Length cut, boolean rush) {
        /** The same piece, known so many days before it must be cut. */
        Ordered known(int days) {
            return new Ordered(number, cutBy - days, cutBy, cut, rush);
        }
    }

    /** So many ropes: reels of 100 to 300 m, 3 to 40 pieces to a reel, 0.1 to 7 a day, every third in a few lengths. */
    static List<WeekRope> some(int count) {
        List<WeekRope> ropes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            ropes.add(one(i, new SplittableRandom(7_000_003L * (i + 1))));
        }
        return ropes;
    }

    private static WeekRope one(int number, SplittableRandom random) {
        int reel = REELS[random.nextInt(REELS.length)];
        double longest = reel * 0.04 * Math.pow(11, random.nextDouble());
        double shortest = longest * (0.1 + 0.4 * random.nextDouble());
        UnitPrice price = new UnitPrice(Math.round(80_000 * Math.pow(7.5, random.nextDouble())));
        double pieces = 0.1 * Math.pow(70, random.nextDouble());
        int lengths = number % FEW == 1 ? 4 + random.nextInt(5) : 0;
        int most = number % 6 == 5 ? LUMP : FEW;
        String kind = lengths > 0 ? "few-lengths" : most == LUMP ? "lumps" : "any";
        return new WeekRope(
                (number + 1) + "-" + kind,
                reel,
                price,
                centimetres(shortest),
                centimetres(longest),
                lengths,
                (int) Math.round(pieces * 1000 * 2 / (most + 1)),
                most);
    }

    private static Length centimetres(double metres) {
        return new Length(Math.round(metres * 100) * 10);
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
                price,
                new Rope.Cutting(LOSS, LOSS),
                new Rope.Worth(shortest, new Length(usual().mm() / 2)),
                usual());
    }

    /** In the mean. */
    double piecesADay() {
        return orders * (most + 1) / 2000.0;
    }

    Length usual() {
        return Length.ofMetres(reel);
    }

    /** What is ordered on so many days of one draw and cut by the last of them, in the order in which it is placed. */
    List<Ordered> orders(int draw, int days) {
        SplittableRandom random = new SplittableRandom(name.hashCode() * 1_000_003L + draw);
        List<Ordered> all = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            for (int line = lines(random); line > 0; line--) {
                boolean rush = random.nextInt(100) < RUSH_PERCENT;
                int ahead = rush ? random.nextInt(2) : SOONEST + random.nextInt(LATEST - SOONEST + 1);
                Length cut = length(random);
                for (int piece = random.nextInt(most); piece >= 0; piece--) {
                    if (day + ahead < days) {
                        all.add(new Ordered(all.size(), day, day + ahead, cut, rush));
                    }
                }
            }
        }
        return all;
    }

    private int lines(SplittableRandom random) {
        double left = Math.exp(-orders / 1000.0);
        int count = -1;
        for (double product = 1; product > left; count++) {
            product *= random.nextDouble();
        }
        return count;
    }

    /** The few lengths that are asked for, each as often as any other; empty where any may be. */
    List<Length> standard() {
        return IntStream.range(0, lengths).mapToObj(this::standard).toList();
    }

    private Length standard(int number) {
        return length(number / (double) (lengths - 1));
    }

    private Length length(SplittableRandom random) {
        double share = random.nextDouble();
        return lengths > 0 ? standard((int) (share * lengths)) : length(share);
    }

    private Length length(double share) {
        return new Length(shortest.mm() + Math.round(share * (longest.mm() - shortest.mm()) / 10) * 10);
    }
}
