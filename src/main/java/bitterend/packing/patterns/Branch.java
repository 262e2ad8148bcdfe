package bitterend.packing.patterns;

/** Columns of which a whole number must be used in all. */
final class Branch {
    private final int[] columns;
    private final double value;

    Branch(int[] columns, double value) {
        this.columns = columns;
        this.value = value;
    }

    int[] columns() {
        return columns;
    }

    /** The whole number below what the linear program uses. */
    double floor() {
        return Math.floor(value + 1e-6);
    }
}
