package bitterend.packing.patterns;

/** One cut: {@code sum coefficient x >= rhs}; coefficients and right-hand side are whole numbers. */
final class ValidInequality {
    private final double rhs;
    private final int[] columns;
    private final double[] coefficients;

    ValidInequality(double rhs, int[] columns, double[] coefficients) {
        this.rhs = rhs;
        this.columns = columns;
        this.coefficients = coefficients;
    }

    double rhs() {
        return rhs;
    }

    int[] columns() {
        return columns;
    }

    double[] coefficients() {
        return coefficients;
    }
}
