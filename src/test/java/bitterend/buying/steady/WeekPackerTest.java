package bitterend.buying.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.stock.worth.CoilTerms;
import bitterend.stock.worth.CoilValue;
import bitterend.stock.worth.PastCuts;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

final class WeekPackerTest {
    static final int LOSS = 10;
    static final long OPENING = 225_000;
    static final long CHANGING = 150_000;
    static final UnitPrice PRICE = new UnitPrice(310_000);
    static final int REEL = 200_000;

    /** A week on a rack: coils, reels of one size, pieces. */
    static final class Weekly {
        private final int[] coils;
        private final int reels;
        private final int[] pieces;
        private final CoilTable worth;

        Weekly(int[] coils, int reels, int[] pieces, CoilTable worth) {
            this.coils = coils.clone();
            this.reels = reels;
            this.pieces = pieces.clone();
            this.worth = worth;
        }

        int[] coils() {
            return coils.clone();
        }

        int reels() {
            return reels;
        }

        int[] pieces() {
            return pieces.clone();
        }

        CoilTable worth() {
            return worth;
        }

        static Weekly random(long seed, int mostPieces, int mostCoils) {
            SplittableRandom dice = new SplittableRandom(seed).split();
            boolean lengthy = dice.nextBoolean();
            int[] pieces = new int[1 + dice.nextInt(mostPieces)];
            Arrays.setAll(pieces, i -> 10 * (200 + dice.nextInt(lengthy ? 6_000 : 2_500)));
            Arrays.sort(pieces);
            int[] fallen = new int[pieces.length];
            Arrays.setAll(fallen, i -> pieces[pieces.length - 1 - i]);
            int[] coils = new int[dice.nextInt(mostCoils + 1)];
            Arrays.setAll(coils, i -> 2_000 + 10 * dice.nextInt(9_000));
            return new Weekly(
                    coils,
                    1 + dice.nextInt(3),
                    fallen,
                    curve(Arrays.stream(coils).sum(), lengthy));
        }

        WeekBins packed() {
            WeekBins packer = new WeekBins(LOSS, OPENING, CHANGING, worth);
            packer.rack(worth);
            for (int coil : coils) {
                packer.coil(coil);
            }
            for (int reel = 0; reel < reels; reel++) {
                packer.reel(REEL, 0, PRICE.of(new Length(REEL)).millis());
            }
            packer.pieces(pieces, pieces.length);
            new WeekPacker(packer).pack();
            return packer;
        }
    }

    static CoilTable curve(long coils, boolean lengthy) {
        List<Length> cuts = java.util.stream.IntStream.rangeClosed(1, 60)
                .mapToObj(i -> new Length(i * (lengthy ? 1_000L : 420L)))
                .toList();
        CoilTerms.Holding holding = new CoilTerms.Holding(Ratio.percent(12), new Cost(10_000), Length.ZERO);
        CoilTerms terms = CoilTerms.of(PRICE, new Length(REEL), new Length(REEL), holding);
        return CoilTable.of(
                CoilValue.of(
                        PastCuts.of(cuts, new Length(LOSS), 40, PastCuts.Source.HISTORY), terms, new Length(coils)),
                REEL);
    }

    @Test
    void coilThatHoldsIt_isCutBeforeAReel() {
        WeekBins packer =
                new Weekly(new int[] {56_000, 57_000, 58_000}, 1, new int[] {16_000}, curve(171_000, true)).packed();
        assertTrue(packer.isUsed(0) || packer.isUsed(1) || packer.isUsed(2));
        assertEquals(false, packer.isUsed(3));
    }

    @Test
    void lossOfTheLastCut_isNotNeeded() {
        WeekBins packer = new Weekly(new int[] {32_010}, 0, new int[] {16_000, 16_000}, curve(32_010, true)).packed();
        assertEquals(0, packer.leftOf(0));
        assertEquals(false, packer.isLate(0) || packer.isLate(1));
        WeekBins shorter = new Weekly(new int[] {32_009}, 0, new int[] {16_000, 16_000}, curve(32_009, true)).packed();
        assertTrue(shorter.isLate(1));
    }

    /** Every way to divide a few pieces is tried. */
    @Test
    void smallWeeks_areDividedNearlyAsWellAsCanBe() {
        long found = 0;
        long fewest = 0;
        int best = 0;
        int weeks = 400;
        for (int seed = 0; seed < weeks; seed++) {
            Weekly week = Weekly.random(seed, 5, 4);
            long ours = week.packed().total();
            long exact = least(week, new int[week.coils().length + week.reels()], new boolean[8], 0);
            if (exact == Long.MAX_VALUE) {
                continue;
            }
            assertTrue(ours >= exact, seed + ": " + ours + " below the least, " + exact);
            best += ours == exact ? 1 : 0;
            found += ours;
            fewest += exact;
        }
        assertTrue(best > weeks * 90 / 100, best + " of " + weeks);
        assertTrue((found - fewest) * 1_000 < 2 * fewest, found + " against " + fewest);
    }

    private static long least(Weekly week, int[] taken, boolean[] used, int piece) {
        if (piece == week.pieces().length) {
            return cost(week, taken, used);
        }
        long least = Long.MAX_VALUE;
        for (int bin = 0; bin < taken.length; bin++) {
            int whole = bin < week.coils().length ? week.coils()[bin] : REEL;
            int need = week.pieces()[piece] + LOSS;
            if (taken[bin] + need <= whole + LOSS) {
                boolean was = used[bin];
                taken[bin] += need;
                used[bin] = true;
                least = Math.min(least, least(week, taken, used, piece + 1));
                taken[bin] -= need;
                used[bin] = was;
            }
        }
        return least;
    }

    private static long cost(Weekly week, int[] taken, boolean[] used) {
        long cost = 0;
        for (int bin = 0; bin < taken.length; bin++) {
            boolean coil = bin < week.coils().length;
            int whole = coil ? week.coils()[bin] : REEL;
            if (used[bin]) {
                long worth = coil
                        ? week.worth().of(whole)
                        : Math.max(
                                PRICE.of(new Length(REEL)).millis(),
                                week.worth().of(whole));
                cost += worth - week.worth().of(Math.max(0, whole - taken[bin])) + CHANGING + (coil ? 0 : OPENING);
            }
        }
        return cost;
    }
}
