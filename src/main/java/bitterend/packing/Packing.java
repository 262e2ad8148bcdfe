package bitterend.packing;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * An engine's answer: the run of every planned piece. Pieces that are not named are not planned.
 *
 * @param places run by piece id
 */
public record Packing(Map<String, RunId> places) {
    public static final Packing EMPTY = new Packing(Map.of());

    public Packing {
        places = Collections.unmodifiableMap(new TreeMap<>(places));
    }

    /** The run of a piece, if it is planned. */
    public Optional<RunId> placeOf(String piece) {
        return Optional.ofNullable(places.get(piece));
    }
}
