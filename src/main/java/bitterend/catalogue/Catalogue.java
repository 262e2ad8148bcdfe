package bitterend.catalogue;

import java.util.List;
import java.util.Optional;

/**
 * The ropes of a shop and what it knows about making ends.
 *
 * @param ropes every rope once
 * @param splices how ends are made
 */
public record Catalogue(List<Rope> ropes, SpliceBook splices) {
    public Catalogue {
        ropes = List.copyOf(ropes);
    }

    public Optional<Rope> findRope(String id) {
        return ropes.stream().filter(rope -> rope.id().equals(id)).findFirst();
    }

    /** The rope of that id; asking for one that is not there is a caller's error. */
    public Rope rope(String id) {
        return findRope(id).orElseThrow(() -> new IllegalArgumentException("no rope " + id));
    }
}
