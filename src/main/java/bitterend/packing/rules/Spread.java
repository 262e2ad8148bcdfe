package bitterend.packing.rules;

import bitterend.packing.model.PieceToCut;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.optaplanner.core.api.score.stream.uni.UniConstraintCollector;

/** Over how many lots or reels some pieces are spread. */
final class Spread {
    private final int places;
    private final Collector.Tally tally;

    private Spread(int places, Collector.Tally tally) {
        this.places = places;
        this.tally = tally;
    }

    int places() {
        return places;
    }

    /** Places after the first. */
    long extra() {
        return places - 1L;
    }

    List<PieceToCut> pieces() {
        return tally.pieces;
    }

    /** What it costs to split an order over one more lot. */
    long splitMillis() {
        return tally.pieces.get(0).plannedRun().reel().splitMillis();
    }

    /** The places by name, in order. */
    String names() {
        return String.join("; ", tally.places.keySet());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Spread spread && spread.places == places;
    }

    @Override
    public int hashCode() {
        return places;
    }

    /** Counts the different places of pieces. */
    record Collector(Function<PieceToCut, String> placeOf)
            implements UniConstraintCollector<PieceToCut, Collector.Tally, Spread> {
        @Override
        public Supplier<Tally> supplier() {
            return Tally::new;
        }

        @Override
        public BiFunction<Tally, PieceToCut, Runnable> accumulator() {
            return (tally, piece) -> tally.add(piece, placeOf.apply(piece));
        }

        @Override
        public Function<Tally, Spread> finisher() {
            return tally -> new Spread(tally.places.size(), tally);
        }

        static final class Tally {
            private final List<PieceToCut> pieces = new ArrayList<>();
            private final TreeMap<String, Integer> places = new TreeMap<>();

            private Runnable add(PieceToCut piece, String place) {
                pieces.add(piece);
                places.merge(place, 1, Integer::sum);
                return () -> {
                    pieces.remove(piece);
                    places.computeIfPresent(place, (name, count) -> count == 1 ? null : count - 1);
                };
            }
        }
    }
}
