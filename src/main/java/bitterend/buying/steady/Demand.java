package bitterend.buying.steady;

import bitterend.measure.Length;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Futures drawn from the past of one rope. A week of the future is a week of the past taken whole, so that lumps stay lumps:
 * where there is a season one from about the same time of the year, else any. Where there is a trend, orders of older
 * weeks are left out or come twice by chance, so that every week is at the level of today; it is not carried further.
 *
 * <p>What a history of so few weeks does not say is in the futures, too: those of one group draw from a past that is itself drawn
 * from the weeks recorded, each as often as it falls (Efron's bootstrap).
 */
public final class Demand {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final long OF_A_PAST = 0x5DEECE66DL;

    private final PastWeeks past;
    private final DemandShape shape;
    private final int[][][] cuts;
    private final int[] places;
    private final long[] sums;
    private final Source recorded;

    public Demand(PastWeeks past, DemandShape shape) {
        this.past = past;
        this.shape = shape;
        cuts = past.weeks().stream()
                .map(week -> week.stream().map(Demand::millimetres).toArray(int[][]::new))
                .toArray(int[][][]::new);
        places = new int[cuts.length];
        Arrays.setAll(places, past::placeOf);
        sums = past.sums(Length.ZERO);
        recorded = new Source(DemandFormula.ones(cuts.length));
    }

    private static int[] millimetres(List<Length> order) {
        return order.stream()
                .mapToInt(cut -> (int) Math.min(SizeOnOffer.LONGEST, cut.mm()))
                .toArray();
    }

    public PastWeeks past() {
        return past;
    }

    public DemandShape shape() {
        return shape;
    }

    /** Metres a week uses on the average at the level of today, the loss of cuts in them, rounded down. */
    public Length weekly(Length loss) {
        long[] all = past.sums(loss);
        long sum = 0;
        for (int week = 0; week < all.length; week++) {
            sum = Math.addExact(sum, Math.multiplyExact(all[week], recorded.level[week]) / DemandFormula.SAME);
        }
        return new Length(sum / all.length);
    }

    /** The weeks of the past as they were. */
    Source asRecorded() {
        return recorded;
    }

    /** A past drawn from the weeks recorded; the same for all futures of one group. */
    Source drawn(long seed, int group) {
        SplittableRandom dice = new SplittableRandom((seed ^ OF_A_PAST) * GOLDEN + group).split();
        int[] drawn = new int[cuts.length];
        for (int i = 0; i < drawn.length; i++) {
            drawn[dice.nextInt(drawn.length)]++;
        }
        return new Source(drawn);
    }

    /** Dice that depend on the seed and a number alone. */
    static SplittableRandom dice(long seed, int number) {
        return new SplittableRandom(seed * GOLDEN + number).split();
    }

    /** A past to draw from, each week as often as it is in it. */
    final class Source {
        private final int[] drawn;
        private final int[] level;
        private final int[][] near;

        private Source(int[] drawn) {
            this.drawn = drawn;
            long growth = shape.trend() ? DemandFormula.growth(sums, drawn) : DemandFormula.SAME;
            level = new int[drawn.length];
            Arrays.setAll(level, week -> DemandFormula.level(growth, drawn.length - 1 - week));
            near = new int[shape.season() ? PastWeeks.PLACES : 1][];
            Arrays.setAll(near, this::near);
        }

        /** The weeks that a week of this place is drawn from; the window widens until there is one. */
        private int[] near(int place) {
            int[] found = new int[0];
            for (int window = DemandShape.WINDOW; found.length == 0; window++) {
                int reach = window;
                found = IntStream.range(0, drawn.length)
                        .filter(week -> !shape.season() || apart(places[week], place) <= reach)
                        .flatMap(week -> IntStream.generate(() -> week).limit(drawn[week]))
                        .toArray();
            }
            return found;
        }

        /** Cut lengths of so many weeks in millimetres, each week in the order of the past; the first is at a place of its year. */
        int[][] weeks(SplittableRandom dice, int from, int count) {
            int[][] weeks = new int[count][];
            for (int i = 0; i < count; i++) {
                int[] draws = near[shape.season() ? (from + i) % PastWeeks.PLACES : 0];
                weeks[i] = week(draws[dice.nextInt(draws.length)], dice);
            }
            return weeks;
        }

        private int[] week(int drawnWeek, SplittableRandom dice) {
            int share = level[drawnWeek];
            int[] cut = new int[0];
            for (int[] order : cuts[drawnWeek]) {
                int times = share / 1000 + (share % 1000 > 0 && dice.nextInt(1000) < share % 1000 ? 1 : 0);
                for (int i = 0; i < times; i++) {
                    int[] longer = Arrays.copyOf(cut, cut.length + order.length);
                    System.arraycopy(order, 0, longer, cut.length, order.length);
                    cut = longer;
                }
            }
            return cut;
        }
    }

    private static int apart(int a, int b) {
        int apart = Math.abs(a - b);
        return Math.min(apart, PastWeeks.PLACES - apart);
    }
}
