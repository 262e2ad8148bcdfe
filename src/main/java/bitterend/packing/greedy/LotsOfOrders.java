package bitterend.packing.greedy;

import bitterend.demand.Piece;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which lots each order draws on, rope by rope. */
final class LotsOfOrders {
    private final Map<String, Map<String, Map<String, Integer>>> byOrder = new HashMap<>();

    void add(Piece piece, Slot slot) {
        byOrder.computeIfAbsent(piece.order(), order -> new HashMap<>())
                .computeIfAbsent(slot.reel().rope(), rope -> new HashMap<>())
                .merge(slot.lot(), 1, Integer::sum);
    }

    void remove(Piece piece, Slot slot) {
        byOrder.getOrDefault(piece.order(), Map.of())
                .getOrDefault(slot.reel().rope(), new HashMap<>())
                .computeIfPresent(slot.lot(), (lot, count) -> count == 1 ? null : count - 1);
    }

    /** How many orders would be split once more if these pieces came off this run. */
    long newSplits(List<Piece> pieces, Slot slot) {
        Set<String> split = new HashSet<>();
        for (Piece piece : pieces) {
            if (splits(piece, slot)) {
                split.add(piece.order());
            }
        }
        return split.size();
    }

    /** Whether its order would be split once more if this piece came off this run. */
    boolean splits(Piece piece, Slot slot) {
        Map<String, Integer> lots = byOrder.getOrDefault(piece.order(), Map.of())
                .getOrDefault(slot.reel().rope(), Map.of());
        return !lots.isEmpty() && !lots.containsKey(slot.lot());
    }
}
