package bitterend.packing.rules;

import bitterend.packing.model.PieceToCut;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.optaplanner.core.api.score.stream.uni.UniConstraintCollector;

/** How many runs of a reel are cut off whole to reach one behind them. */
final class Skipped {
    private final int runs;
    private final List<PieceToCut> pieces;

    private Skipped(int runs, List<PieceToCut> pieces) {
        this.runs = runs;
        this.pieces = pieces;
    }

    int runs() {
        return runs;
    }

    /** What comes off the reel. */
    List<PieceToCut> pieces() {
        return pieces;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Skipped skipped && skipped.runs == runs;
    }

    @Override
    public int hashCode() {
        return runs;
    }

    /** Counts the pieces on each run of a reel. */
    static final class Collector implements UniConstraintCollector<PieceToCut, Collector.Count, Skipped> {
        @Override
        public Supplier<Count> supplier() {
            return Count::new;
        }

        @Override
        public BiFunction<Count, PieceToCut, Runnable> accumulator() {
            return Count::add;
        }

        @Override
        public Function<Count, Skipped> finisher() {
            return count -> new Skipped(count.skipped(), count.pieces);
        }

        static final class Count {
            private final List<PieceToCut> pieces = new ArrayList<>();
            private int[] onRun = new int[1];

            private Runnable add(PieceToCut piece) {
                int run = piece.plannedRun().run().index() - 1;
                if (run >= onRun.length) {
                    onRun = java.util.Arrays.copyOf(onRun, run + 1);
                }
                onRun[run]++;
                pieces.add(piece);
                return () -> {
                    onRun[run]--;
                    pieces.remove(piece);
                };
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
}
