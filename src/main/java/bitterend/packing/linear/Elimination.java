package bitterend.packing.linear;

import java.util.Arrays;

/** One factorisation: row after row is eliminated by the entry chosen, and the triangles are written down. */
final class Elimination {
    private final int m;
    private final int[] basis;
    private final ActiveMatrix a;
    private final PivotChoice choice;
    private final Triangles into;
    /** The column eliminated with each row, -1 while there is none. */
    private final int[] columnOf;

    private final UpperColumn[] above;
    /** The pivot row, by column. */
    private final double[] work;

    private final int[] mark;
    private int stamp;
    private int done;

    /** @param basis the columns to factorise, out of all columns with their rows and values */
    Elimination(int[] basis, int[][] index, double[][] value, Triangles into) {
        this.m = basis.length;
        this.basis = basis;
        this.into = into;
        into.clear();
        a = new ActiveMatrix(basis, index, value);
        columnOf = new int[m];
        Arrays.fill(columnOf, -1);
        above = new UpperColumn[m];
        choice = new PivotChoice(a);
        work = new double[m];
        mark = new int[m];
    }

    /** Eliminates as far as possible; false when some columns depend on others. */
    boolean run() {
        while (done < m) {
            if (!choice.next()) {
                return false;
            }
            int r = choice.row();
            int c = choice.column();
            pivotOn(r, c);
            choice.eliminated();
            columnOf[r] = c;
            into.order[done++] = r;
        }
        return true;
    }

    private void pivotOn(int r, int c) {
        double p = a.valueAt(r, c);
        into.pivot[r] = p;
        a.leaveRow(r, c);
        int width = moveUp(r);
        boolean any = false;
        for (int s = 0; s < a.colLen[c]; s++) {
            int i = a.colRow[c][s];
            if (i == r) {
                continue;
            }
            double factor = a.valueAt(i, c) / p;
            a.leaveRow(i, c);
            if (Math.abs(factor) < Lu.TINY) {
                continue;
            }
            into.lower.add(i, factor);
            any = true;
            stamp++;
            subtract(i, r, factor, width);
        }
        if (any) {
            into.closeLower(r);
        }
        a.colLen[c] = 0;
    }

    /** What is left of the pivot row goes to the upper triangle; how many entries that is. */
    private int moveUp(int r) {
        int width = a.rowLen[r];
        int[] cols = a.rowCol[r];
        double[] vals = a.rowVal[r];
        for (int t = 0; t < width; t++) {
            int c = cols[t];
            a.leaveColumn(c, r);
            if (above[c] == null) {
                above[c] = new UpperColumn();
            }
            above[c].add(r, vals[t]);
            work[c] = vals[t];
        }
        return width;
    }

    /** Subtracts the pivot row, so many times, from row i. */
    private void subtract(int i, int r, double factor, int width) {
        int[] pivotCols = a.rowCol[r];
        for (int t = 0; t < width; t++) {
            mark[pivotCols[t]] = stamp;
        }
        for (int t = a.rowLen[i] - 1; t >= 0; t--) {
            int col = a.rowCol[i][t];
            if (mark[col] == stamp) {
                mark[col] = -stamp;
                a.change(i, t, a.rowVal[i][t] - factor * work[col], Lu.TINY);
            }
        }
        for (int t = 0; t < width; t++) {
            int col = pivotCols[t];
            if (mark[col] == stamp) {
                a.fill(i, col, -factor * work[col]);
            }
        }
    }

    /** Replaces the columns that depend on others by the spare columns of the rows left over. */
    void complete(int[] spare, double[][] value) {
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
            above[free] = new UpperColumn();
            columnOf[r] = free;
            into.pivot[r] = value[spare[r]][0];
            into.order[done++] = r;
        }
    }

    /** Writes down the upper triangle, and permutes the basis so that the column at place r was eliminated with row r. */
    void store() {
        int[] permuted = new int[m];
        for (int r : into.order) {
            int c = columnOf[r];
            permuted[r] = basis[c];
            UpperColumn column = above[c];
            if (column != null) {
                for (int t = 0; t < column.size; t++) {
                    into.upper.add(column.at[t], column.value[t]);
                }
            }
            into.upper.close();
        }
        System.arraycopy(permuted, 0, basis, 0, m);
    }
}
