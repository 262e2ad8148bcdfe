package bitterend.packing.linear;

/** A factorised basis matrix: sparse triangles, then one elementary column for every exchange. */
final class Lu {
    /** What counts as nothing. */
    static final double TINY = 1e-13;

    private final Triangles triangles;
    private final EtaFile etas = new EtaFile();

    Lu(int m) {
        triangles = new Triangles(m);
    }

    /**
     * Factorises the basis and permutes it so that the column at place r was pivoted on row r. Columns that depend on
     * others are replaced by {@code spare} columns of the rows left over.
     *
     * @param index rows of every column there is
     * @param value values of every column there is
     * @return whether any column had to be replaced
     */
    boolean factorise(int[] basis, int[][] index, double[][] value, int[] spare) {
        etas.clear();
        Elimination elimination = new Elimination(basis, index, value, triangles);
        boolean replaced = !elimination.run();
        if (replaced) {
            elimination.complete(spare, value);
        }
        elimination.store();
        return replaced;
    }

    /** Replaces the column at place {@code row}; {@code alpha} is the new one after {@link #solve}. */
    void exchange(int row, double[] alpha) {
        etas.add(row, alpha);
    }

    int etas() {
        return etas.count();
    }

    /** Entries of the elementary columns: grows with every exchange. */
    int etaEntries() {
        return etas.entries();
    }

    int entries() {
        return triangles.entries();
    }

    /** Solves B x = a in place. */
    void solve(double[] a) {
        triangles.solve(a);
        etas.solve(a);
    }

    /** Solves B' y = c in place. */
    void solveTransposed(double[] c) {
        etas.solveTransposed(c);
        triangles.solveTransposed(c);
    }
}
