package bitterend.demand;

import bitterend.measure.FineLength;
import bitterend.measure.Ratio;
import bitterend.measure.Sentence;
import bitterend.measure.Written;

/**
 * How far a length may be off: a length, or a part of the length it is a tolerance of.
 *
 * @param absolute as a length; zero when it is relative
 * @param relative as a part; zero when it is absolute
 */
public record Tolerance(Written absolute, Ratio relative) {
    /** No tolerance was stated. */
    public static final Tolerance NONE = new Tolerance(Written.NOTHING, Ratio.ZERO);

    public Tolerance {
        FineLength length = absolute.exact();
        if (length.isNegative() || relative.isNegative() || (length.isPositive() && relative.isPositive())) {
            throw new IllegalArgumentException("tolerance " + absolute + " or " + relative);
        }
    }

    public boolean isStated() {
        return !equals(NONE);
    }

    /** The tolerance of a length; a relative one is rounded up to 0.0001 mm. */
    public FineLength of(FineLength length) {
        return absolute.exact().isPositive() ? absolute.exact() : length.times(relative);
    }

    /** The tolerance of a length in words: a length as it was written, a part as the length that it comes to. */
    Sentence words(FineLength length) {
        return absolute.exact().isPositive() ? Sentence.NONE.finely(absolute) : Sentence.NONE.and(of(length));
    }
}
