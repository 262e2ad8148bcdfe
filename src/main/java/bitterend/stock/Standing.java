package bitterend.stock;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What still stands: neither taken back nor taking another back. */
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

    /**
     * The reel that each coil came off, by the first of its movements that stands: an id whose reel was never here is given
     * again.
     *
     * @param all every movement of the ledger, oldest first
     */
    public static Map<String, String> parents(List<Movement> all) {
        Map<String, String> parents = new TreeMap<>();
        for (Movement movement : movements(all)) {
            parents.putIfAbsent(
                    movement.entry().reel(), movement.entry().origin().parent());
        }
        parents.values().removeIf(String::isEmpty);
        return parents;
    }

    /**
     * Those of the events that still stand, in their order: one with movements as long as one of them stands, a mere fact
     * until an event takes it back. All events of the ledger must be among them.
     */
    public static List<Event> events(List<Event> all) {
        Set<Long> undone = new HashSet<>();
        Set<Long> movements = new HashSet<>();
        for (Event event : all) {
            undone.add(event.act().undoes());
            event.movements()
                    .forEach(movement -> movements.add(movement.entry().origin().undoes()));
        }
        return all.stream()
                .filter(event -> event.act().kind() != Event.Kind.UNDONE && !undone.contains(event.number()))
                .filter(event -> event.movements().isEmpty()
                        || event.movements().stream().anyMatch(movement -> !movements.contains(movement.number())))
                .toList();
    }
}
