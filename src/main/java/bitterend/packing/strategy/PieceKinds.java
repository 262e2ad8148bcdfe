package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceKind;
import bitterend.packing.Undone;
import bitterend.packing.Urgency;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Pieces that any reel takes on the same terms. An order counts only where a reel is kept for it, a piece's pin only
 * where it has one; of matched sets only what a begun one is bound to is looked at here.
 */
final class PieceKinds {
    private final Map<Key, List<Piece>> kinds = new TreeMap<>(Key.ORDER);
    private final Map<List<Piece.RopeChoice>, String> choices = new HashMap<>();

    private record Key(PieceKind kind, long longest, String choices, Undone undone) {
        static final Comparator<Key> ORDER = Comparator.comparingLong(Key::longest)
                .reversed()
                .thenComparing(Key::choices)
                .thenComparing(key -> key.kind().certificate())
                .thenComparing(key -> key.kind().ownRope())
                .thenComparing(key -> key.kind().order())
                .thenComparing(key -> key.kind().begun().toString())
                .thenComparing(key -> key.kind().pin())
                .thenComparing(key -> key.kind().arrival())
                .thenComparing(Key::undone);
    }

    PieceKinds(PackingProblem problem, List<Piece> pieces) {
        Eligibility rules = new Eligibility(problem);
        Urgency urgency = new Urgency(problem);
        for (Piece piece : pieces) {
            kinds.computeIfAbsent(key(piece, rules, urgency), key -> new ArrayList<>())
                    .add(piece);
        }
        kinds.values()
                .forEach(kind -> kind.sort(Comparator.comparing(Piece::order).thenComparing(Piece::id)));
    }

    /** The pieces of each kind, the longest kind first; within a kind by order. */
    List<List<Piece>> kinds() {
        return kinds.values().stream().map(List::copyOf).toList();
    }

    private Key key(Piece piece, Eligibility rules, Urgency urgency) {
        String text = choices.computeIfAbsent(piece.choices(), List::toString);
        return new Key(rules.kindOf(piece), piece.cut().mm(), text, urgency.of(piece));
    }
}
