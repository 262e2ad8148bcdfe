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

    /** How many the linear program uses. */
    double value() {
        return value;
    }
}
