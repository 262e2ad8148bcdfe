package bitterend.packing.rules;

import bitterend.packing.model.PieceToCut;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.optaplanner.core.api.score.stream.uni.UniConstraintCollector;

/** What is cut from one run: the millimetres decide, the pieces are there to be named. */
final class Load {
    private final long mm;
    private final List<PieceToCut> pieces;

    private Load(long mm, List<PieceToCut> pieces) {
        this.mm = mm;
        this.pieces = pieces;
    }

    /** Cut lengths, with a cut loss for every piece. */
    long mm() {
        return mm;
    }

    List<PieceToCut> pieces() {
        return pieces;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Load load && load.mm == mm;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(mm);
    }

    /** Sums the pieces of a run. */
    static final class Collector implements UniConstraintCollector<PieceToCut, Collector.Sum, Load> {
        @Override
        public Supplier<Sum> supplier() {
            return Sum::new;
        }

        @Override
        public BiFunction<Sum, PieceToCut, Runnable> accumulator() {
            return Sum::add;
        }

        @Override
        public Function<Sum, Load> finisher() {
            return sum -> new Load(sum.mm, sum.pieces);
        }

        static final class Sum {
            private final List<PieceToCut> pieces = new ArrayList<>();
            private long mm;

            private Runnable add(PieceToCut piece) {
                long size = piece.sizeOn(piece.plannedRun());
                mm += size;
                pieces.add(piece);
                return () -> {
                    mm -= size;
                    pieces.remove(piece);
                };
            }
        }
    }
}
