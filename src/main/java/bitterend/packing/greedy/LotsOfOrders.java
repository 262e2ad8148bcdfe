package bitterend.packing.greedy;

import bitterend.demand.Piece;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which lots each order draws on, rope by rope. */
final class LotsOfOrders {
    private final Map<String, OfOrder> byOrder = new HashMap<>();

    /** The lots of one order. */
    static final class OfOrder {
        private final Map<Integer, Integer> pieces = new HashMap<>();
        private final Map<Integer, Integer> lotsOfRope = new HashMap<>();
        private final BitSet lots = new BitSet();
        private final BitSet ropes = new BitSet();

        /** Whether the order would be split once more by a piece off this run. */
        boolean splits(Slot slot) {
            return ropes.get(slot.ropeNumber()) && !lots.get(slot.lotNumber());
        }

        private void add(Slot slot) {
            if (pieces.merge(slot.lotNumber(), 1, Integer::sum) == 1) {
                lots.set(slot.lotNumber());
                lotsOfRope.merge(slot.ropeNumber(), 1, Integer::sum);
                ropes.set(slot.ropeNumber());
            }
        }

        private void remove(Slot slot) {
            if (pieces.merge(slot.lotNumber(), -1, Integer::sum) == 0) {
                lots.clear(slot.lotNumber());
                ropes.set(slot.ropeNumber(), lotsOfRope.merge(slot.ropeNumber(), -1, Integer::sum) > 0);
            }
        }
    }

    OfOrder of(Piece piece) {
        return byOrder.computeIfAbsent(piece.order(), order -> new OfOrder());
    }

    void add(Piece piece, Slot slot) {
        of(piece).add(slot);
    }

    void remove(Piece piece, Slot slot) {
        of(piece).remove(slot);
    }

    /** How many orders would be split once more if these pieces came off this run. */
    long newSplits(List<Piece> pieces, Slot slot) {
        Set<String> split = new HashSet<>();
        for (Piece piece : pieces) {
            if (of(piece).splits(slot)) {
                split.add(piece.order());
            }
        }
        return split.size();
    }
}
