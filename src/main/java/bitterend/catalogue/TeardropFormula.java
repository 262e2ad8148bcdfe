package bitterend.catalogue;

import bitterend.measure.FineLength;

/**
 * The inside of a thimble as a teardrop: two straight legs from its point, tangent to the circle of its crown. With inside
 * width W and inside length L, r = W/2 and d = L - r, its perimeter is 2 sqrt(d^2 - r^2) + 2 r (pi - acos(r/d)) (geometry).
 * A heavy thimble for 1/2 in rope, 1.50 by 2.75 in inside, is 6.641 in round.
 */
public final class TeardropFormula {
    private TeardropFormula() {}

    /** Whether such a teardrop has a point: it is longer than it is wide. */
    public static boolean isOne(FineLength width, FineLength length) {
        return width.isPositive() && length.compareTo(width) > 0;
    }

    /** Its inside perimeter, to the nearest 0.0001 mm. */
    public static FineLength perimeter(FineLength width, FineLength length) {
        if (!isOne(width, length)) {
            throw new IllegalArgumentException("a teardrop " + width + " wide and " + length + " long");
        }
        double r = width.units() / 2.0;
        double d = length.units() - r;
        return new FineLength(Math.round(2 * Math.sqrt(d * d - r * r) + 2 * r * (Math.PI - Math.acos(r / d))));
    }
}
