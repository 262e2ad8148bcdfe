package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.Undone;
import bitterend.packing.Urgency;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Pieces that any reel takes on the same terms. An order counts only where a reel is kept for it, a piece's pin only
 * where it has one; of matched sets only what a begun one is bound to is looked at here.
 */
final class PieceKinds {
    private final Map<Key, List<Piece>> kinds = new TreeMap<>(Key.ORDER);
    private final Set<String> ordersWithReels = new HashSet<>();
    private final Map<List<Piece.RopeChoice>, String> choices = new HashMap<>();
    private final Map<String, String> pins = new HashMap<>();

    private record Key(
            long longest,
            String choices,
            String certificate,
            boolean ownRope,
            String order,
            String begun,
            String pin,
            Undone undone) {
        static final Comparator<Key> ORDER = Comparator.comparingLong(Key::longest)
                .reversed()
                .thenComparing(Key::choices)
                .thenComparing(Key::certificate)
                .thenComparing(Key::ownRope)
                .thenComparing(Key::order)
                .thenComparing(Key::begun)
                .thenComparing(Key::pin)
                .thenComparing(Key::undone);
    }

    PieceKinds(PackingProblem problem, List<Piece> pieces) {
        problem.reels().stream().map(Reel::custody).forEach(custody -> ordersWithReels.add(custody.order()));
        for (Pin pin : problem.pins()) {
            pins.put(pin.piece(), pin.reel());
        }
        Urgency urgency = new Urgency(problem);
        for (Piece piece : pieces) {
            kinds.computeIfAbsent(key(piece, urgency), key -> new ArrayList<>()).add(piece);
        }
        kinds.values()
                .forEach(kind -> kind.sort(Comparator.comparing(Piece::order).thenComparing(Piece::id)));
    }

    /** The pieces of each kind, the longest kind first; within a kind by order. */
    List<List<Piece>> kinds() {
        return kinds.values().stream().map(List::copyOf).toList();
    }

    private Key key(Piece piece, Urgency urgency) {
        return new Key(
                piece.cut().mm(),
                choices.computeIfAbsent(piece.choices(), List::toString),
                piece.certificate(),
                piece.ownRope(),
                ordersWithReels.contains(piece.order()) ? piece.order() : "",
                piece.matching().begun().toString(),
                pins.getOrDefault(piece.id(), ""),
                urgency.of(piece));
    }
}
