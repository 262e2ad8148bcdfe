package bitterend.quoting.sharing;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.stock.Reel;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/** Puts loads that are known by their lengths alone on new reels, with pieces by name. */
final class TableCut {
    private final NewRope rope;
    private final Map<Length, Deque<Piece>> pieces = new HashMap<>();
    private final Map<String, Deque<Reel>> reels = new HashMap<>();

    TableCut(NewRope rope, PackingProblem problem) {
        this.rope = rope;
        problem.pieces().forEach(piece -> pieces.computeIfAbsent(piece.cut(), cut -> new ArrayDeque<>())
                .add(piece));
        problem.reels().forEach(reel -> reels.computeIfAbsent(reel.rope(), name -> new ArrayDeque<>())
                .add(reel));
    }

    /** The packing; nothing when the reels run out. */
    Optional<Packing> packing(List<SortedMap<Length, Integer>> loads) {
        Map<String, RunId> places = new HashMap<>();
        for (SortedMap<Length, Integer> load : loads) {
            long taken = load.entrySet().stream()
                    .mapToLong(entry -> rope.taken(entry.getKey()) * entry.getValue())
                    .sum();
            Reel reel = reels.getOrDefault(rope.name(rope.sizeFor(taken)), new ArrayDeque<>())
                    .poll();
            if (reel == null) {
                return Optional.empty();
            }
            load.forEach((cut, count) -> {
                for (int i = 0; i < count; i++) {
                    places.put(next(cut).id(), new RunId(reel.id(), 1));
                }
            });
        }
        return Optional.of(new Packing(places));
    }

    private Piece next(Length cut) {
        return pieces.getOrDefault(cut, new ArrayDeque<>()).remove();
    }
}
