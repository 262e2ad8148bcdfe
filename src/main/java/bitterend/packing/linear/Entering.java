package bitterend.packing.linear;

import bitterend.packing.linear.Simplex.Steps;

/** Which column enters next in the primal method. */
interface Entering {
    /** Everything was worked out again. */
    void renewed();

    /** A column that lowers the cost; -1 when none does. */
    int next(Steps budget);

    /**
     * A column is about to take another's place.
     *
     * @param q the column
     * @param r the place
     * @param pivot what one unit of it takes from the one that is basic there
     * @param rho row r of the inverse
     */
    void exchange(int q, int r, double pivot, double[] rho);
}
