package bitterend.packing.linear;

import java.util.Arrays;

/** The matrix under elimination: what is left of every row, and in which rows every column still has an entry. */
final class ActiveMatrix {
    final int m;
    final int[][] rowCol;
    final double[][] rowVal;
    final int[] rowLen;
    final int[][] colRow;
    final int[] colLen;
    final boolean[] colDone;

    /** The columns of the basis, given as the rows and values of all columns. */
    ActiveMatrix(int[] basis, int[][] index, double[][] value) {
        m = basis.length;
        rowCol = new int[m][];
        rowVal = new double[m][];
        rowLen = new int[m];
        colRow = new int[m][];
        colLen = new int[m];
        colDone = new boolean[m];
        makeRoom(basis, index);
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

    private void makeRoom(int[] basis, int[][] index) {
        for (int column : basis) {
            for (int r : index[column]) {
                rowLen[r]++;
            }
        }
        for (int r = 0; r < m; r++) {
            rowCol[r] = new int[rowLen[r] + 2];
            rowVal[r] = new double[rowLen[r] + 2];
            rowLen[r] = 0;
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

    /** The largest entry of a column, without its sign. */
    double largest(int c) {
        double largest = 0;
        for (int t = 0; t < colLen[c]; t++) {
            largest = Math.max(largest, Math.abs(valueAt(colRow[c][t], c)));
        }
        return largest;
    }

    /** Takes a column's entry out of a row. */
    void leaveRow(int r, int c) {
        int[] cols = rowCol[r];
        for (int t = 0; t < rowLen[r]; t++) {
            if (cols[t] == c) {
                leaveRowAt(r, t);
                return;
            }
        }
    }

    private void leaveRowAt(int r, int t) {
        int last = --rowLen[r];
        rowCol[r][t] = rowCol[r][last];
        rowVal[r][t] = rowVal[r][last];
    }

    /** Takes a row out of those of a column. */
    void leaveColumn(int c, int r) {
        int[] rows = colRow[c];
        for (int t = 0; t < colLen[c]; t++) {
            if (rows[t] == r) {
                rows[t] = rows[--colLen[c]];
                return;
            }
        }
    }

    /** Changes the t-th entry of a row, or takes it out of row and column where next to nothing is left. */
    void change(int r, int t, double v, double tiny) {
        if (Math.abs(v) < tiny) {
            leaveColumn(rowCol[r][t], r);
            leaveRowAt(r, t);
        } else {
            rowVal[r][t] = v;
        }
    }

    /** A new entry where there was none. */
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
