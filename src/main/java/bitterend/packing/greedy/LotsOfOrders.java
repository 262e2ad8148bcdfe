package bitterend.packing.greedy;

import bitterend.demand.Piece;
import bitterend.packing.PlanPrice;
import bitterend.stock.Reel;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which lots each order draws on, rope by rope. */
final class LotsOfOrders {
    private final Map<String, Map<String, Integer>> piecesByLot = new HashMap<>();

    void add(Piece piece, Reel reel) {
        piecesByLot
                .computeIfAbsent(key(piece, reel), key -> new HashMap<>())
                .merge(PlanPrice.lotOf(reel), 1, Integer::sum);
    }

    void remove(Piece piece, Reel reel) {
        piecesByLot
                .getOrDefault(key(piece, reel), new HashMap<>())
                .computeIfPresent(PlanPrice.lotOf(reel), (lot, count) -> count == 1 ? null : count - 1);
    }

    /** How many orders would be split once more if these pieces came off this reel. */
    long newSplits(List<Piece> pieces, Reel reel) {
        Set<String> split = new HashSet<>();
        for (Piece piece : pieces) {
            Map<String, Integer> lots = piecesByLot.getOrDefault(key(piece, reel), Map.of());
            if (!lots.isEmpty() && !lots.containsKey(PlanPrice.lotOf(reel))) {
                split.add(piece.order());
            }
        }
        return split.size();
    }

    private static String key(Piece piece, Reel reel) {
        return piece.order() + "\n" + reel.rope();
    }
}
