package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import java.util.List;
import java.util.concurrent.TimeUnit;
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

/** One pricing: for the prices of the solved linear program, the best pattern of every kind of reel. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@SuppressWarnings("NullAway.Init")
public class PricingSpeed {
    /** Pieces of the day. */
    @Param({"30", "100", "300"})
    public int pieces;

    private Instance instance;
    private Pricer pricer;
    private Bound bound;
    private long[] need;

    /** Solves the linear program of a day. */
    @Setup
    public void solve() {
        instance = new Normaliser(RandomDays.day(1, pieces, pieces / 7, 1_500, 40_000, 3_000)).instance();
        pricer = new Pricer(instance);
        Master master = new Master(instance, pricer, Rejection.NEVER, List.of(), 1);
        master.solve(Long.MAX_VALUE / 4, Integer.MAX_VALUE, false, Budget.endless());
        bound = master.bound();
        need = new long[instance.types.length];
        Pricer.Offers best = exact();
        for (int k = 0; k < need.length; k++) {
            need[k] = Math.max(0, best.reducedProfit[k] - 1);
        }
    }

    /** Gives up early where patterns are hard to find: most rounds of column generation. */
    @Benchmark
    public Pricer.Offers heuristic() {
        return pricer.price(bound.price(), bound.scale(), instance.demand, need, true, Budget.endless());
    }

    /** Proves that there is no better pattern: what a bound rests on. */
    @Benchmark
    public Pricer.Offers exact() {
        return pricer.price(bound.price(), bound.scale(), instance.demand, need, false, Budget.endless());
    }
}
