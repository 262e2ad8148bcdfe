package bitterend.packing.patterns;

import java.util.Arrays;

/**
 * A factorised basis matrix: sparse LU with Markowitz pivots, then one elementary column for every exchange.
 *
 * <p>Sources: H. M. Markowitz, "The elimination form of the inverse and its application to linear programming",
 * Management Science 3(3) (1957) 255-269; G. B. Dantzig and W. Orchard-Hays, "The product form for the inverse in the
 * simplex method", Mathematical Tables and Other Aids to Computation 8 (1954) 64-67.
 */
final class Lu {
    private static final double TINY = 1e-13;
    private static final double THRESHOLD = 0.1;
    private static final int LOOKED = 8;

    private final int m;
    private int[] order = new int[0];
    private double[] pivot = new double[0];
    private final Sparse lower = new Sparse();
    private final Sparse upper = new Sparse();
    private final Sparse exchanges = new Sparse();
    private int[] lowerRow = new int[16];
    private int[] exchangeRow = new int[16];
    private double[] exchangePivot = new double[16];

    Lu(int m) {
        this.m = m;
    }

    /** Vectors one behind another. */
    private static final class Sparse {
        int[] start = new int[17];
        int[] at = new int[64];
        double[] value = new double[64];
        int vectors;
        int size;

        void clear() {
            vectors = 0;
            size = 0;
        }

        void add(int row, double v) {
            if (size == at.length) {
                at = Arrays.copyOf(at, size * 2);
                value = Arrays.copyOf(value, size * 2);
            }
            at[size] = row;
            value[size++] = v;
        }

        void close() {
            vectors++;
            if (vectors == start.length) {
                start = Arrays.copyOf(start, vectors * 2);
            }
            start[vectors] = size;
        }
    }

    /** The matrix under elimination. */
    private static final class Active {
        final int m;
        final int[][] rowCol;
        final double[][] rowVal;
        final int[] rowLen;
        final int[][] colRow;
        final int[] colLen;
        final boolean[] colDone;

        Active(int m, int[] basis, int[][] index, double[][] value) {
            this.m = m;
            rowCol = new int[m][];
            rowVal = new double[m][];
            rowLen = new int[m];
            colRow = new int[m][];
            colLen = new int[m];
            colDone = new boolean[m];
            for (int c = 0; c < m; c++) {
                for (int r : index[basis[c]]) {
                    rowLen[r]++;
                }
            }
            for (int r = 0; r < m; r++) {
                rowCol[r] = new int[rowLen[r] + 2];
                rowVal[r] = new double[rowLen[r] + 2];
                rowLen[r] = 0;
            }
            for (int c = 0; c < m; c++) {
                int[] rows = index[basis[c]];
                double[] values = value[basis[c]];
                colRow[c] = rows.clone();
                colLen[c] = rows.length;
                for (int t = 0; t < rows.length; t++) {
                    int r = rows[t];
                    rowCol[r][rowLen[r]] = c;
                    rowVal[r][rowLen[r]++] = values[t];
                }
            }
        }

        double valueAt(int r, int c) {
            for (int t = 0; t < rowLen[r]; t++) {
                if (rowCol[r][t] == c) {
                    return rowVal[r][t];
                }
            }
            return 0;
        }

        void leaveRow(int r, int c) {
            int[] cols = rowCol[r];
            for (int t = 0; t < rowLen[r]; t++) {
                if (cols[t] == c) {
                    int last = --rowLen[r];
                    cols[t] = cols[last];
                    rowVal[r][t] = rowVal[r][last];
                    return;
                }
            }
        }

        void leaveColumn(int c, int r) {
            int[] rows = colRow[c];
            for (int t = 0; t < colLen[c]; t++) {
                if (rows[t] == r) {
                    rows[t] = rows[--colLen[c]];
                    return;
                }
            }
        }

        void fill(int r, int c, double v) {
            if (rowLen[r] == rowCol[r].length) {
                rowCol[r] = Arrays.copyOf(rowCol[r], rowLen[r] * 2);
                rowVal[r] = Arrays.copyOf(rowVal[r], rowLen[r] * 2);
            }
            rowCol[r][rowLen[r]] = c;
            rowVal[r][rowLen[r]++] = v;
            if (colLen[c] == colRow[c].length) {
                colRow[c] = Arrays.copyOf(colRow[c], colLen[c] * 2 + 2);
            }
            colRow[c][colLen[c]++] = r;
        }
    }

    /**
     * Factorises the basis and permutes it so that the column at place r was pivoted on row r. Columns that depend on
     * others are replaced by {@code spare} columns of the rows left over.
     *
     * @return whether any column had to be replaced
     */
    boolean factorise(int[] basis, int[][] index, double[][] value, int[] spare) {
        lower.clear();
        upper.clear();
        exchanges.clear();
        order = new int[m];
        pivot = new double[m];
        Active a = new Active(m, basis, index, value);
        int[] columnOf = new int[m];
        Arrays.fill(columnOf, -1);
        Growing[] above = new Growing[m];
        int[] queue = new int[m * 4 + 8];
        int done = eliminate(a, columnOf, above, queue);
        boolean replaced = done < m;
        if (replaced) {
            done = complete(a, columnOf, above, basis, value, spare, done);
        }
        store(columnOf, above, basis);
        return replaced;
    }

    /** One column of U while it grows. */
    private static final class Growing {
        int[] at = new int[4];
        double[] value = new double[4];
        int size;

        void add(int row, double v) {
            if (size == at.length) {
                at = Arrays.copyOf(at, size * 2);
                value = Arrays.copyOf(value, size * 2);
            }
            at[size] = row;
            value[size++] = v;
        }
    }

    private int eliminate(Active a, int[] columnOf, Growing[] above, int[] queue) {
        int done = 0;
        int head = 0;
        int tail = 0;
        for (int c = 0; c < m; c++) {
            if (a.colLen[c] == 1) {
                queue[tail++] = c;
            }
        }
        double[] work = new double[m];
        int[] mark = new int[m];
        int stamp = 0;
        boolean[] rowDone = new boolean[m];
        while (done < m) {
            int c = -1;
            while (head < tail && c < 0) {
                int candidate = queue[head++];
                if (!a.colDone[candidate] && a.colLen[candidate] == 1) {
                    c = candidate;
                }
            }
            int r;
            if (c >= 0) {
                r = a.colRow[c][0];
                if (Math.abs(a.valueAt(r, c)) < 1e-9) {
                    a.colDone[c] = true;
                    continue;
                }
            } else {
                int row = singleRow(a, rowDone);
                if (row >= 0) {
                    r = row;
                    c = a.rowCol[r][0];
                } else {
                    long chosen = markowitz(a);
                    if (chosen < 0) {
                        return done;
                    }
                    r = (int) (chosen >> 32);
                    c = (int) chosen;
                }
            }
            stamp = pivotOn(a, r, c, above, work, mark, stamp);
            rowDone[r] = true;
            a.colDone[c] = true;
            columnOf[r] = c;
            order[done++] = r;
            for (int t = 0; t < a.rowLen[r]; t++) {
                int other = a.rowCol[r][t];
                if (a.colLen[other] == 1) {
                    if (tail == queue.length) {
                        int live = tail - head;
                        System.arraycopy(queue, head, queue, 0, live);
                        head = 0;
                        tail = live;
                    }
                    if (tail < queue.length) {
                        queue[tail++] = other;
                    }
                }
            }
            a.rowLen[r] = 0;
        }
        return done;
    }

    private static int singleRow(Active a, boolean[] rowDone) {
        for (int r = 0; r < a.m; r++) {
            if (!rowDone[r] && a.rowLen[r] == 1 && Math.abs(a.rowVal[r][0]) > 1e-9) {
                int c = a.rowCol[r][0];
                double largest = 0;
                for (int t = 0; t < a.colLen[c]; t++) {
                    largest = Math.max(largest, Math.abs(a.valueAt(a.colRow[c][t], c)));
                }
                if (Math.abs(a.rowVal[r][0]) >= THRESHOLD * largest) {
                    return r;
                }
            }
        }
        return -1;
    }

    /** Looks at a few of the shortest columns; the pivot that fills least among entries that are not too small. */
    private static long markowitz(Active a) {
        int shortest = Integer.MAX_VALUE;
        for (int c = 0; c < a.m; c++) {
            if (!a.colDone[c] && a.colLen[c] > 0) {
                shortest = Math.min(shortest, a.colLen[c]);
            }
        }
        long best = -1;
        long bestFill = Long.MAX_VALUE;
        int looked = 0;
        for (int c = 0; c < a.m && looked < LOOKED; c++) {
            if (a.colDone[c]
                    || a.colLen[c] == 0
                    || (a.colLen[c] > shortest && best >= 0)
                    || a.colLen[c] > shortest + 2) {
                continue;
            }
            double largest = 0;
            for (int t = 0; t < a.colLen[c]; t++) {
                largest = Math.max(largest, Math.abs(a.valueAt(a.colRow[c][t], c)));
            }
            if (largest < 1e-9) {
                continue;
            }
            looked++;
            for (int t = 0; t < a.colLen[c]; t++) {
                int r = a.colRow[c][t];
                long fill = (long) (a.rowLen[r] - 1) * (a.colLen[c] - 1);
                if (fill < bestFill && Math.abs(a.valueAt(r, c)) >= THRESHOLD * largest) {
                    bestFill = fill;
                    best = ((long) r << 32) | c;
                }
            }
        }
        return best;
    }

    private int pivotOn(Active a, int r, int c, Growing[] above, double[] work, int[] mark, int stamp) {
        double p = a.valueAt(r, c);
        pivot[r] = p;
        a.leaveRow(r, c);
        int width = a.rowLen[r];
        int[] cols = a.rowCol[r];
        double[] vals = a.rowVal[r];
        for (int t = 0; t < width; t++) {
            a.leaveColumn(cols[t], r);
            growing(above, cols[t]).add(r, vals[t]);
            work[cols[t]] = vals[t];
        }
        int next = stamp;
        boolean any = false;
        for (int s = 0; s < a.colLen[c]; s++) {
            int i = a.colRow[c][s];
            if (i == r) {
                continue;
            }
            double factor = a.valueAt(i, c) / p;
            a.leaveRow(i, c);
            if (Math.abs(factor) < TINY) {
                continue;
            }
            lower.add(i, factor);
            any = true;
            next++;
            subtract(a, i, r, factor, work, mark, next, width);
        }
        if (any) {
            if (lower.vectors == lowerRow.length) {
                lowerRow = Arrays.copyOf(lowerRow, lowerRow.length * 2);
            }
            lowerRow[lower.vectors] = r;
            lower.close();
        }
        a.colLen[c] = 0;
        return next;
    }

    private static void subtract(
            Active a, int i, int r, double factor, double[] work, int[] mark, int stamp, int width) {
        int[] pivotCols = a.rowCol[r];
        for (int t = 0; t < width; t++) {
            mark[pivotCols[t]] = stamp;
        }
        for (int t = a.rowLen[i] - 1; t >= 0; t--) {
            int col = a.rowCol[i][t];
            if (mark[col] == stamp) {
                mark[col] = -stamp;
                double v = a.rowVal[i][t] - factor * work[col];
                if (Math.abs(v) < TINY) {
                    a.leaveColumn(col, i);
                    int last = --a.rowLen[i];
                    a.rowCol[i][t] = a.rowCol[i][last];
                    a.rowVal[i][t] = a.rowVal[i][last];
                } else {
                    a.rowVal[i][t] = v;
                }
            }
        }
        for (int t = 0; t < width; t++) {
            int col = pivotCols[t];
            if (mark[col] == stamp) {
                a.fill(i, col, -factor * work[col]);
            }
        }
    }

    private static Growing growing(Growing[] above, int c) {
        if (above[c] == null) {
            above[c] = new Growing();
        }
        return above[c];
    }

    private int complete(
            Active a, int[] columnOf, Growing[] above, int[] basis, double[][] value, int[] spare, int already) {
        int done = already;
        boolean[] used = new boolean[m];
        for (int c : columnOf) {
            if (c >= 0) {
                used[c] = true;
            }
        }
        int free = 0;
        for (int r = 0; r < m; r++) {
            if (columnOf[r] >= 0) {
                continue;
            }
            while (used[free]) {
                free++;
            }
            used[free] = true;
            basis[free] = spare[r];
            above[free] = new Growing();
            columnOf[r] = free;
            pivot[r] = value[spare[r]][0];
            order[done++] = r;
            a.rowLen[r] = 0;
        }
        return done;
    }

    private void store(int[] columnOf, Growing[] above, int[] basis) {
        int[] permuted = new int[m];
        for (int k = 0; k < m; k++) {
            int r = order[k];
            int c = columnOf[r];
            permuted[r] = basis[c];
            Growing g = above[c];
            if (g != null) {
                for (int t = 0; t < g.size; t++) {
                    upper.add(g.at[t], g.value[t]);
                }
            }
            upper.close();
        }
        System.arraycopy(permuted, 0, basis, 0, m);
    }

    /** Replaces the column at place {@code row}; {@code alpha} is the new one after {@link #solve}. */
    void exchange(int row, double[] alpha) {
        int k = exchanges.vectors;
        if (k == exchangeRow.length) {
            exchangeRow = Arrays.copyOf(exchangeRow, k * 2);
            exchangePivot = Arrays.copyOf(exchangePivot, k * 2);
        }
        exchangeRow[k] = row;
        exchangePivot[k] = alpha[row];
        for (int r = 0; r < m; r++) {
            if (r != row && Math.abs(alpha[r]) > TINY) {
                exchanges.add(r, alpha[r]);
            }
        }
        exchanges.close();
    }

    int exchanges() {
        return exchanges.vectors;
    }

    /** Entries of the elementary columns: grows with every exchange. */
    int exchangeEntries() {
        return exchanges.size;
    }

    int entries() {
        return lower.size + upper.size + m;
    }

    /** Solves B x = a in place. */
    void solve(double[] a) {
        for (int k = 0; k < lower.vectors; k++) {
            double t = a[lowerRow[k]];
            if (t != 0) {
                for (int s = lower.start[k]; s < lower.start[k + 1]; s++) {
                    a[lower.at[s]] -= lower.value[s] * t;
                }
            }
        }
        for (int k = m - 1; k >= 0; k--) {
            int r = order[k];
            double t = a[r];
            if (t != 0) {
                t /= pivot[r];
                a[r] = t;
                for (int s = upper.start[k]; s < upper.start[k + 1]; s++) {
                    a[upper.at[s]] -= upper.value[s] * t;
                }
            }
        }
        for (int k = 0; k < exchanges.vectors; k++) {
            int r = exchangeRow[k];
            double t = a[r];
            if (t != 0) {
                t /= exchangePivot[k];
                for (int s = exchanges.start[k]; s < exchanges.start[k + 1]; s++) {
                    a[exchanges.at[s]] -= exchanges.value[s] * t;
                }
                a[r] = t;
            }
        }
    }

    /** Solves B' y = c in place. */
    void solveTransposed(double[] c) {
        for (int k = exchanges.vectors - 1; k >= 0; k--) {
            int r = exchangeRow[k];
            double t = c[r];
            for (int s = exchanges.start[k]; s < exchanges.start[k + 1]; s++) {
                t -= exchanges.value[s] * c[exchanges.at[s]];
            }
            c[r] = t / exchangePivot[k];
        }
        for (int k = 0; k < m; k++) {
            int r = order[k];
            double t = c[r];
            for (int s = upper.start[k]; s < upper.start[k + 1]; s++) {
                t -= upper.value[s] * c[upper.at[s]];
            }
            c[r] = t / pivot[r];
        }
        for (int k = lower.vectors - 1; k >= 0; k--) {
            double t = c[lowerRow[k]];
            for (int s = lower.start[k]; s < lower.start[k + 1]; s++) {
                t -= lower.value[s] * c[lower.at[s]];
            }
            c[lowerRow[k]] = t;
        }
    }
}
