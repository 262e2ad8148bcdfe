package bitterend.packing.rules;

import bitterend.packing.model.PieceToCut;
import java.util.Arrays;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.optaplanner.core.api.score.stream.uni.UniConstraintCollector;

/** How many runs of a reel are cut off whole to reach one behind them, from the pieces on each run. */
final class SkippedRuns implements UniConstraintCollector<PieceToCut, SkippedRuns.Count, Integer> {
    @Override
    public Supplier<Count> supplier() {
        return Count::new;
    }

    @Override
    public BiFunction<Count, PieceToCut, Runnable> accumulator() {
        return Count::add;
    }

    @Override
    public Function<Count, Integer> finisher() {
        return Count::skipped;
    }

    static final class Count {
        private int[] onRun = new int[1];

        private Runnable add(PieceToCut piece) {
            int run = piece.plannedRun().run().index() - 1;
            if (run >= onRun.length) {
                onRun = Arrays.copyOf(onRun, run + 1);
            }
            onRun[run]++;
            return () -> onRun[run]--;
        }

        private int skipped() {
            int empty = 0;
            int beforeLast = 0;
            for (int count : onRun) {
                beforeLast = count > 0 ? empty : beforeLast;
                empty += count == 0 ? 1 : 0;
            }
            return beforeLast;
        }
    }
}
