package bitterend.stock;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Movements that still stand: neither taken back nor taking another back. */
public final class Standing {
    private Standing() {}

    /** Those of the movements that still stand, in their order; both halves of a pair must be among them. */
    public static List<Movement> movements(List<Movement> all) {
        Set<Long> undone = new HashSet<>();
        all.forEach(movement -> undone.add(movement.entry().origin().undoes()));
        return all.stream()
                .filter(movement -> movement.entry().origin().undoes() == 0 && !undone.contains(movement.number()))
                .toList();
    }
}
