package bitterend.packing;

import java.util.Collections;
import java.util.List;
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

    /** Where the pieces of these draws lie. */
    public static Packing of(List<ReelDraw> draws) {
        Map<String, RunId> places = new TreeMap<>();
        for (ReelDraw draw : draws) {
            for (RunDraw run : draw.runs()) {
                run.cuts().forEach(cut -> places.put(cut.piece(), new RunId(draw.reel(), run.run())));
            }
        }
        return new Packing(places);
    }

    /** The run of a piece, if it is planned. */
    public Optional<RunId> placeOf(String piece) {
        return Optional.ofNullable(places.get(piece));
    }
}
