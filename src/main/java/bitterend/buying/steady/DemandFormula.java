package bitterend.buying.steady;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.BinomialDistribution;

/** Whether a past shows a season or a trend, and what it takes to bring its weeks to the level of today. */
final class DemandFormula {
    /** No growth, in 1/1000. */
    static final long SAME = 1000;

    private static final int YEAR = PastWeeks.PLACES;
    private static final int BLOCK = 4;
    private static final int BLOCKS_OF_A_YEAR = YEAR / BLOCK;
    private static final int SHUFFLES = 199;
    /** A season that is not there costs little when it is believed; one that is missed leaves pieces late. */
    private static final double RISK_OF_A_SEASON = 0.10;

    private static final double RISK_OF_A_TREND = 0.05;

    private DemandFormula() {}

    /**
     * Whether weeks of the same time of the year are alike: ranks of weekly sums, so that one lump decides nothing, averaged
     * over neighbouring weeks of the year; their spread against that of the same weeks shuffled (a permutation test).
     */
    static boolean showsSeason(long[] sums, int[] places) {
        if (sums.length < YEAR) {
            return false;
        }
        double[] ranks = ranks(sums);
        double seen = spread(ranks, places);
        SplittableRandom dice = new SplittableRandom(sums.length);
        int asWide = 1;
        for (int i = 0; i < SHUFFLES; i++) {
            shuffle(ranks, dice);
            asWide += spread(ranks, places) >= seen ? 1 : 0;
        }
        return asWide <= RISK_OF_A_SEASON * (SHUFFLES + 1);
    }

    /**
     * Whether one year is above or below the last: four weeks against the same four a year before, how often more and how often
     * less (a sign test in the manner of the seasonal Kendall test, Hirsch, Slack and Smith, Water Resour. Res. 18, 1982).
     */
    static boolean showsTrend(long[] sums) {
        if (sums.length < 2 * YEAR) {
            return false;
        }
        int more = 0;
        int less = 0;
        for (int block = 0; (block + 1 + BLOCKS_OF_A_YEAR) * BLOCK <= sums.length; block++) {
            int order = Long.compare(block(sums, block), block(sums, block + BLOCKS_OF_A_YEAR));
            more += order > 0 ? 1 : 0;
            less += order < 0 ? 1 : 0;
        }
        int fewer = Math.min(more, less);
        return more + less > 0
                && 2 * new BinomialDistribution(more + less, 0.5).cumulativeProbability(fewer) <= RISK_OF_A_TREND;
    }

    /** Four weeks, counted from the last ones back. */
    private static long block(long[] sums, int back) {
        int end = sums.length - back * BLOCK;
        return Arrays.stream(sums, end - BLOCK, end).sum();
    }

    /** The last year against the one before in 1/1000, each week as often as it is drawn; from a half to twice. */
    static long growth(long[] sums, int[] drawn) {
        double last = 0;
        double before = 0;
        for (int week = Math.max(0, sums.length - 2 * YEAR); week < sums.length; week++) {
            double sum = (double) sums[week] * drawn[week];
            last += week >= sums.length - YEAR ? sum : 0;
            before += week < sums.length - YEAR ? sum : 0;
        }
        double ratio = before > 0 && last > 0 ? last / before : 1;
        return Math.round(SAME * Math.min(2, Math.max(0.5, ratio)));
    }

    /** How many orders of today one of so many weeks ago stands for, in 1/1000; from a fifth to five. */
    static int level(long growth, int weeksAgo) {
        double level = Math.pow((double) growth / SAME, (double) weeksAgo / YEAR);
        return (int) Math.round(SAME * Math.min(5, Math.max(0.2, level)));
    }

    static int[] ones(int count) {
        int[] ones = new int[count];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static double spread(double[] ranks, int[] places) {
        double[] sum = new double[YEAR];
        int[] count = new int[YEAR];
        for (int week = 0; week < ranks.length; week++) {
            for (int near = -DemandShape.WINDOW; near <= DemandShape.WINDOW; near++) {
                int place = Math.floorMod(places[week] + near, YEAR);
                sum[place] += ranks[week];
                count[place]++;
            }
        }
        double spread = 0;
        double middle = (ranks.length - 1) / 2.0;
        for (int place = 0; place < YEAR; place++) {
            double off = count[place] == 0 ? 0 : sum[place] / count[place] - middle;
            spread += off * off;
        }
        return spread;
    }

    /** From 0; equal sums share the mean of their ranks. */
    private static double[] ranks(long[] sums) {
        Integer[] order = IntStream.range(0, sums.length).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparingLong(week -> sums[week]));
        double[] ranks = new double[sums.length];
        for (int from = 0; from < order.length; ) {
            int to = from;
            while (to < order.length && sums[order[to]] == sums[order[from]]) {
                to++;
            }
            for (int i = from; i < to; i++) {
                ranks[order[i]] = (from + to - 1) / 2.0;
            }
            from = to;
        }
        return ranks;
    }

    private static void shuffle(double[] values, SplittableRandom dice) {
        for (int i = values.length - 1; i > 0; i--) {
            int other = dice.nextInt(i + 1);
            double value = values[i];
            values[i] = values[other];
            values[other] = value;
        }
    }
}
