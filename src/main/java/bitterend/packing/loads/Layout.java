package bitterend.packing.loads;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Which rows the linear program begins with, and their right-hand sides. */
final class Layout {
    /** Orders pay for lots. */
    final boolean lots;
    /** Pieces cut, by item and slot. */
    final int[][] pieceRow;
    /** A set takes a holder. */
    final int[] setRow;
    /** A set takes a holder only where its order takes the lot, by set and holder. */
    final int[][] linkRow;
    /** By order and rope: the first lot is free, at most once; in the row after it, at most one. */
    final int[][] firstLotRow;

    final int[] reelRow;
    /** Weight undone of a class. */
    final int[] classRow = new int[LoadModel.CLASSES];

    /** Weight of each class that may stay undone. */
    final long[] allowed;

    private final List<Double> rhs = new ArrayList<>();

    Layout(LoadModel model, boolean lots, long[] allowed) {
        this.lots = lots;
        this.allowed = allowed;
        pieceRow = new int[model.items.length][];
        for (Item item : model.items) {
            addItem(item);
        }
        setRow = new int[model.sets.length];
        linkRow = new int[model.sets.length][0];
        for (SetOfPieces set : model.sets) {
            setRow[set.index] = row(1);
            if (lots && set.order != Item.NONE) {
                linkRow[set.index] = rows(set.holders.size(), 0);
            }
        }
        firstLotRow = new int[model.orders.length][0];
        for (OrderOnLots order : model.orders) {
            int ropes = 1 + Arrays.stream(order.rope).max().orElse(0);
            firstLotRow[order.index] = new int[lots ? ropes : 0];
            for (int g = 0; g < firstLotRow[order.index].length; g++) {
                firstLotRow[order.index][g] = row(0);
                row(-1);
            }
        }
        reelRow = rows(model.reels.length, -1);
        long[] all = model.everything();
        for (int k = 0; k < classRow.length; k++) {
            classRow[k] = allowed[k] > 0 && allowed[k] < all[k] ? row((double) -allowed[k]) : Program.NO_ROW;
        }
    }

    /** A set has pieces by holder; pieces on all lots of an order count together. */
    private void addItem(Item item) {
        if (item.set != Item.NONE) {
            pieceRow[item.index] = rows(item.slots, 0);
        } else {
            pieceRow[item.index] = new int[item.slots];
            Arrays.fill(pieceRow[item.index], row(item.count()));
        }
    }

    private int[] rows(int count, double bound) {
        int[] rows = new int[count];
        for (int k = 0; k < count; k++) {
            rows[k] = row(bound);
        }
        return rows;
    }

    private int row(double bound) {
        rhs.add(bound);
        return rhs.size() - 1;
    }

    double[] rhs() {
        return rhs.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
