package bitterend.demand;

import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Ratio;

/**
 * How far a length may be off: a length, or a part of the length it is a tolerance of.
 *
 * @param absolute as a length; zero when it is relative
 * @param relative as a part; zero when it is absolute
 */
public record Tolerance(Length absolute, Ratio relative) {
    /** No tolerance was stated. */
    public static final Tolerance NONE = new Tolerance(Length.ZERO, Ratio.ZERO);

    public Tolerance {
        if (absolute.isNegative() || relative.isNegative() || (absolute.isPositive() && relative.isPositive())) {
            throw new IllegalArgumentException("tolerance " + absolute + " or " + relative);
        }
    }

    public boolean isStated() {
        return !equals(NONE);
    }

    /** The tolerance of a length; a relative one is rounded up to 0.0001 mm. */
    public FineLength of(FineLength length) {
        return absolute.isPositive() ? absolute.fine() : length.times(relative);
    }
}
