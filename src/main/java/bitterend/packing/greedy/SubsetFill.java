package bitterend.packing.greedy;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.RunLoad;
import java.util.ArrayList;
import java.util.List;

/**
 * Fills the room left in one run as full as can be, by a depth-first search over the pieces, longest first, that stops at
 * a number of nodes. After the minimum bin slack heuristic: J. N. D. Gupta, J. C. Ho, "A new heuristic algorithm for the
 * one-dimensional bin-packing problem", Production Planning &amp; Control 10(6), 1999.
 */
final class SubsetFill {
    private final List<Piece> pieces;
    private final long[] need;
    private final long room;
    private final int nodeLimit;
    private final boolean[] chosen;
    private final boolean[] best;
    private long bestSum;
    private int nodes;

    private SubsetFill(List<Piece> pieces, Slot slot, long room, Length loss, int nodeLimit) {
        this.pieces = pieces;
        this.room = room;
        this.nodeLimit = nodeLimit;
        need = pieces.stream()
                .mapToLong(piece -> Bench.cutOn(piece, slot).plus(loss).mm())
                .toArray();
        chosen = new boolean[need.length];
        best = new boolean[need.length];
    }

    /** The pieces that fill the run best; none when none fits. Pieces come longest first and are eligible there. */
    static List<Piece> of(List<Piece> longestFirst, Slot slot, RunLoad load, Length loss, int nodeLimit) {
        long room = slot.length()
                .plus(loss)
                .minus(load.sum())
                .minus(loss.times(load.pieces()))
                .mm();
        SubsetFill fill = new SubsetFill(longestFirst, slot, room, loss, nodeLimit);
        fill.search(0, 0);
        List<Piece> result = new ArrayList<>();
        for (int i = 0; i < fill.best.length; i++) {
            if (fill.best[i]) {
                result.add(fill.pieces.get(i));
            }
        }
        return result;
    }

    private boolean search(int from, long sum) {
        if (sum > bestSum) {
            bestSum = sum;
            System.arraycopy(chosen, 0, best, 0, best.length);
        }
        if (bestSum == room || nodes++ > nodeLimit) {
            return true;
        }
        for (int i = from; i < need.length; i++) {
            boolean repeated = i > from && need[i] == need[i - 1];
            if (repeated || sum + need[i] > room) {
                continue;
            }
            chosen[i] = true;
            boolean done = search(i + 1, sum + need[i]);
            chosen[i] = false;
            if (done) {
                return true;
            }
        }
        return false;
    }
}
