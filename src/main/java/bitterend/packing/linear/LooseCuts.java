package bitterend.packing.linear;

import java.util.Arrays;

/** The cuts of a solved program that do not bind: rows whose surplus is basic and above zero. */
final class LooseCuts {
    private static final double LOOSE = 1e-3;

    private final Rows rows;
    private final Columns columns;
    private final Basis basis;
    /** The new place of every row, -1 for those that go. */
    private final int[] fresh;

    private final int kept;

    /** Finds them. */
    LooseCuts(Rows rows, Columns columns, Basis basis) {
        this.rows = rows;
        this.columns = columns;
        this.basis = basis;
        basis.refactorise();
        fresh = new int[rows.m];
        int stay = 0;
        for (int i = 0; i < rows.m; i++) {
            fresh[i] = loose(i) ? -1 : stay++;
        }
        kept = stay;
    }

    private boolean loose(int i) {
        int r = columns.place[rows.surplus[i]];
        return rows.cut[i] && r >= 0 && basis.x[r] > LOOSE && columns.place[rows.artificial[i]] < 0;
    }

    /** Whether there is any. */
    boolean any() {
        return kept < rows.m;
    }

    /** Drops them; their own columns still stand there, for the caller to drop. True for those. */
    boolean[] drop() {
        boolean[] dropped = new boolean[columns.n];
        for (int i = 0; i < rows.m; i++) {
            dropped[rows.surplus[i]] = fresh[i] < 0;
            dropped[rows.artificial[i]] = fresh[i] < 0;
        }
        int[] rest = rest(dropped);
        rows.drop(fresh);
        basis.shrink(rest);
        for (int j = 0; j < columns.n; j++) {
            if (!dropped[j]) {
                columns.thin(j, fresh);
            }
        }
        return dropped;
    }

    /** The basic columns that stay. */
    private int[] rest(boolean[] dropped) {
        return Arrays.stream(basis.column).filter(j -> !dropped[j]).toArray();
    }
}
