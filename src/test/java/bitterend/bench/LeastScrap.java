package bitterend.bench;

import bitterend.measure.Length;
import bitterend.packing.linear.Simplex;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Scrap of a rope in a few lengths that no way of planning avoids in the long run: all lengths are asked for equally often,
 * every reel ends as pieces, cut loss and scrap, and no mix of whole reels makes less of it. A linear program over all ways to
 * divide a reel; they arrive as they are needed.
 */
final class LeastScrap {
    private static final long CELL_MM = 10;
    private static final int MOST_ROUNDS = 500;
    private static final double NONE_BETTER = 1 + 1e-9;
    private static final double DEAR = 1e6;

    private final List<Length> lengths;
    private final int[] cells;
    private final int reel;

    private LeastScrap(WeekRope rope) {
        lengths = rope.standard();
        cells = lengths.stream()
                .mapToInt(each -> cells(each.plus(WeekRope.LOSS)))
                .toArray();
        reel = cells(rope.usual().plus(WeekRope.LOSS));
    }

    /** In % of the metres ordered; nothing where any length is asked for, since pieces that fill a reel can then be found. */
    static double percent(WeekRope rope) {
        return rope.lengths() == 0 ? 0 : new LeastScrap(rope).percent();
    }

    private static int cells(Length length) {
        return Math.toIntExact(length.mm() / CELL_MM);
    }

    private double percent() {
        double metres = lengths.stream().mapToLong(Length::mm).sum();
        double drawn = metres + WeekRope.LOSS.times(lengths.size()).mm();
        double whole = (reel * CELL_MM - WeekRope.LOSS.mm()) * reels();
        return 100 * Math.max(0, whole - drawn) / metres;
    }

    /** How many reels a piece of each length takes at least, whatever is cut with it. */
    private double reels() {
        double[] one = new double[cells.length];
        double[] dear = new double[cells.length];
        Arrays.fill(one, 1);
        Arrays.fill(dear, DEAR);
        Simplex program = new Simplex(one, dear, 1);
        double least = 0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] price = program.duals();
            if (round == 0) {
                Arrays.fill(price, 1);
            }
            int[] best = best(price);
            double brings = 0;
            for (int i = 0; i < best.length; i++) {
                brings += best[i] * price[i];
            }
            // Prices at which no reel brings more than one are a proof, whatever made them.
            least = Math.max(least, Arrays.stream(price).sum() / Math.max(1, brings));
            if (brings <= NONE_BETTER) {
                break;
            }
            program.addColumn(
                    IntStream.range(0, best.length).toArray(),
                    Arrays.stream(best).asDoubleStream().toArray(),
                    1);
            program.primal(steps -> false);
        }
        return least;
    }

    /** How many of each length one reel gives that brings the most. */
    private int[] best(double[] price) {
        double[] most = new double[reel + 1];
        int[] last = new int[reel + 1];
        Arrays.fill(last, -1);
        for (int filled = 1; filled <= reel; filled++) {
            most[filled] = most[filled - 1];
            for (int i = 0; i < cells.length; i++) {
                if (cells[i] <= filled && most[filled - cells[i]] + price[i] > most[filled]) {
                    most[filled] = most[filled - cells[i]] + price[i];
                    last[filled] = i;
                }
            }
        }
        int[] count = new int[cells.length];
        for (int filled = reel; filled > 0; ) {
            if (last[filled] < 0) {
                filled--;
            } else {
                count[last[filled]]++;
                filled -= cells[last[filled]];
            }
        }
        return count;
    }
}
