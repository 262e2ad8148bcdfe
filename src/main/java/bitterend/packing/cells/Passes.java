package bitterend.packing.cells;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Passes over rows of cells, one for each exact load: the most that is earned under it once some more pieces may be cut (R.
 * Bellman, <i>Dynamic Programming</i>, Princeton 1957). No load stands for another. Rows that are given back are used again.
 */
public final class Passes {
    /** Worth of a load that cannot be cut. */
    public static final int NEVER = -1_500_000_000;

    private final List<int[]> pool = new ArrayList<>();
    private int cells;

    /** From now on rows have so many cells; those that were handed out before are no longer of use. */
    public void cells(int count) {
        cells = count;
    }

    /** A row with anything in it. */
    public int[] row() {
        for (int p = pool.size() - 1; p >= 0; p--) {
            if (pool.get(p).length >= cells) {
                return pool.remove(p);
            }
        }
        return new int[cells];
    }

    /** A row in which nothing can be cut. */
    public int[] emptyRow() {
        int[] row = row();
        Arrays.fill(row, 0, cells, NEVER);
        return row;
    }

    /** A row that nobody reads any more. */
    public void giveBack(int[] row) {
        pool.add(row);
    }

    /** Gives back rows, of which equal ones stand next to each other. */
    public void giveBack(List<int[]> rows) {
        for (int r = 0; r < rows.size(); r++) {
            if (r == 0 || rows.get(r) != rows.get(r - 1)) {
                pool.add(rows.get(r));
            }
        }
    }

    /**
     * The row once pieces of a size may be cut as well; the same row where none may.
     *
     * @param size cells of a piece, at least one
     * @param price of a piece
     * @param least pieces that must be cut
     * @param most pieces that may be cut
     */
    public int[] copies(int[] from, int size, int price, int least, int most) {
        int fit = Math.min(most, (cells - 1) / size);
        if (least == 0) {
            return upTo(fit, size, price, from);
        }
        int[] next = emptyRow();
        for (int q = least; q <= fit; q++) {
            raise(from, q * size, q * price, next);
        }
        return next;
    }

    /** Up to so many copies: none or one, then as many again and so on, so that seven copies take three passes. */
    private int[] upTo(int most, int size, int price, int[] from) {
        int[] row = from;
        int copies = 0;
        while (copies < most) {
            int more = Math.min(copies + 1, most - copies);
            int[] next = row();
            raised(row, more * size, more * price, next, cells);
            if (row != from) {
                pool.add(row);
            }
            row = next;
            copies += more;
        }
        return row;
    }

    private static void raised(int[] from, int shift, int worth, int[] next, int cells) {
        System.arraycopy(from, 0, next, 0, shift);
        for (int c = shift; c < cells; c++) {
            next[c] = Math.max(from[c], from[c - shift] + worth);
        }
    }

    private void raise(int[] from, int shift, int worth, int[] next) {
        int length = cells - shift;
        for (int c = 0; c < length; c++) {
            next[c + shift] = Math.max(next[c + shift], from[c] + worth);
        }
    }
}
