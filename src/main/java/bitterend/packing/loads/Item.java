package bitterend.packing.loads;

import bitterend.demand.Piece;
import java.util.List;

/**
 * Pieces that are alike: same lengths, same reels, same set, same class and weight, and where splitting an order is paid
 * for the same order.
 */
final class Item {
    /** Of {@link #order} and {@link #set}: none. */
    static final int NONE = -1;

    final int index;
    final List<Piece> pieces;
    /** Class of urgency, 0 for the most urgent. */
    final int urgency;

    /** Weight of leaving one undone. */
    final long weight;
    /** The order, where its lots are priced. */
    final int order;

    final int set;
    /** Cells that one piece and its cut take on each reel, 0 where it may not be cut. */
    final int[] cells;
    /** Which price holds on each reel: its lot, its holder, or 0; {@link #NONE} where it may not be cut. */
    final int[] slot;
    /** How many prices it has. */
    int slots = 1;

    Item(int index, List<Piece> pieces, int urgency, long weight, int order, int set, int[] cells) {
        this.index = index;
        this.pieces = List.copyOf(pieces);
        this.urgency = urgency;
        this.weight = weight;
        this.order = order;
        this.set = set;
        this.cells = cells;
        slot = new int[cells.length];
        for (int r = 0; r < cells.length; r++) {
            slot[r] = cells[r] == 0 ? NONE : 0;
        }
    }

    int count() {
        return pieces.size();
    }
}
