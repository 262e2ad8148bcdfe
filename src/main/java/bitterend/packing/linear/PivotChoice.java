package bitterend.packing.linear;

/**
 * Which entry to eliminate by next: columns with one entry first, then rows with one entry, then the entry that fills
 * least.
 *
 * <p>Source: H. M. Markowitz, "The elimination form of the inverse and its application to linear programming",
 * Management Science 3(3) (1957) 255-269.
 */
final class PivotChoice {
    private static final double NOTHING = 1e-9;
    /** An entry this much smaller than the largest of its column is too small. */
    private static final double THRESHOLD = 0.1;

    private static final int LOOKED = 8;

    private final ActiveMatrix a;
    private final boolean[] rowDone;
    /** Columns that came to have one entry. */
    private final int[] queue;

    private int head;
    private int tail;
    private int row = -1;
    private int column = -1;

    PivotChoice(ActiveMatrix a) {
        this.a = a;
        rowDone = new boolean[a.m];
        queue = new int[a.m * 4 + 8];
        for (int c = 0; c < a.m; c++) {
            if (a.colLen[c] == 1) {
                queue[tail++] = c;
            }
        }
    }

    /** The row chosen. */
    int row() {
        return row;
    }

    /** The column chosen. */
    int column() {
        return column;
    }

    /** Chooses; false when nothing is left that is not too small. */
    boolean next() {
        return singleColumn() || singleRow() || fillsLeast();
    }

    private boolean choose(int r, int c) {
        row = r;
        column = c;
        return true;
    }

    private boolean singleColumn() {
        while (head < tail) {
            int c = queue[head++];
            if (a.colDone[c] || a.colLen[c] != 1) {
                continue;
            }
            int r = a.colRow[c][0];
            if (Math.abs(a.valueAt(r, c)) < NOTHING) {
                a.colDone[c] = true;
            } else {
                return choose(r, c);
            }
        }
        return false;
    }

    private boolean singleRow() {
        for (int r = 0; r < a.m; r++) {
            if (!rowDone[r] && a.rowLen[r] == 1 && Math.abs(a.rowVal[r][0]) > NOTHING) {
                int c = a.rowCol[r][0];
                if (Math.abs(a.rowVal[r][0]) >= THRESHOLD * a.largest(c)) {
                    return choose(r, c);
                }
            }
        }
        return false;
    }

    /** Looks at a few of the shortest columns; the pivot that fills least among entries that are not too small. */
    private boolean fillsLeast() {
        int shortest = shortestColumn();
        boolean any = false;
        long leastFill = Long.MAX_VALUE;
        int looked = 0;
        for (int c = 0; c < a.m && looked < LOOKED; c++) {
            if (a.colDone[c] || a.colLen[c] == 0 || a.colLen[c] > (any ? shortest : shortest + 2)) {
                continue;
            }
            double largest = a.largest(c);
            if (largest < NOTHING) {
                continue;
            }
            looked++;
            for (int t = 0; t < a.colLen[c]; t++) {
                int r = a.colRow[c][t];
                long fill = (long) (a.rowLen[r] - 1) * (a.colLen[c] - 1);
                if (fill < leastFill && Math.abs(a.valueAt(r, c)) >= THRESHOLD * largest) {
                    leastFill = fill;
                    any = choose(r, c);
                }
            }
        }
        return any;
    }

    private int shortestColumn() {
        int shortest = Integer.MAX_VALUE;
        for (int c = 0; c < a.m; c++) {
            if (!a.colDone[c] && a.colLen[c] > 0) {
                shortest = Math.min(shortest, a.colLen[c]);
            }
        }
        return shortest;
    }

    /** After the elimination by the entry chosen: row and column are done, and columns of the row may have one entry. */
    void eliminated() {
        rowDone[row] = true;
        a.colDone[column] = true;
        for (int t = 0; t < a.rowLen[row]; t++) {
            int other = a.rowCol[row][t];
            if (a.colLen[other] == 1) {
                enqueue(other);
            }
        }
        a.rowLen[row] = 0;
    }

    private void enqueue(int c) {
        if (tail == queue.length) {
            int live = tail - head;
            System.arraycopy(queue, head, queue, 0, live);
            head = 0;
            tail = live;
        }
        if (tail < queue.length) {
            queue[tail++] = c;
        }
    }
}
