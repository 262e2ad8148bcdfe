package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import bitterend.packing.linear.Simplex;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The master's part of column generation, without the pricing: the patterns of a day arrive one by one in the order in
 * which they were found, and after each the linear program is brought back to its optimum, by a pivot or a few.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@SuppressWarnings("NullAway.Init")
public class MasterSpeed {
    private static final double DEAR = 100;

    /** Pieces of the day. */
    @Param({"30", "100", "300"})
    public int pieces;

    private Instance instance;
    private List<Pattern> patterns;
    private double unit;

    /** The patterns that arrived, so that the time for one of them is shown. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.OPERATIONS)
    public static class Arrivals {
        /** Patterns added. */
        public long pattern;
    }

    /** Finds the patterns of a day. */
    @Setup
    public void solve() {
        instance = new Normaliser(RandomDays.day(1, pieces, pieces / 7, 1_500, 40_000, 3_000)).instance();
        Master master = new Master(instance, new Pricer(instance), Rejection.NEVER, List.of(), 1);
        master.solve(Long.MAX_VALUE / 4, Integer.MAX_VALUE, false, Budget.endless());
        patterns = master.patterns();
        unit = patterns.stream().mapToDouble(pattern -> pattern.cost).max().orElse(1);
    }

    /** The value of the linear program once all patterns are in. */
    @Benchmark
    public double arriveOneByOne(Arrivals arrivals) {
        Simplex lp = bare();
        for (Pattern pattern : patterns) {
            add(lp, pattern);
            lp.primal(Budget.endless());
            arrivals.pattern++;
        }
        return lp.objective();
    }

    /** A row for every item, and one for the supply of every kind of reel. */
    private Simplex bare() {
        double[] rhs = new double[instance.items + instance.types.length];
        double[] artificial = new double[rhs.length];
        Arrays.fill(artificial, DEAR);
        for (int i = 0; i < instance.items; i++) {
            rhs[i] = instance.demand[i];
        }
        for (ReelType type : instance.types) {
            rhs[instance.items + type.index] = -type.supply;
        }
        return new Simplex(rhs, artificial, 1);
    }

    private void add(Simplex lp, Pattern pattern) {
        int size = pattern.item.length;
        int[] rows = Arrays.copyOf(pattern.item, size + 1);
        double[] values = new double[size + 1];
        for (int t = 0; t < size; t++) {
            values[t] = pattern.count[t];
        }
        rows[size] = instance.items + pattern.type;
        values[size] = -1;
        lp.addColumn(rows, values, pattern.cost / unit);
    }
}
