package bitterend.demand;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The angle at which a leg of a sling hangs, from the vertical.
 *
 * @param millidegrees thousandths of a degree; from 0, below 90 degrees
 */
public record LegAngle(long millidegrees) {
    /** The smallest that is no leg's any more. */
    public static final long RIGHT_ANGLE = 90_000;

    private static final long WIDEST = 60_000;

    public LegAngle {
        if (millidegrees < 0 || millidegrees >= RIGHT_ANGLE) {
            throw new IllegalArgumentException("a leg hangs from 0 to below 90 degrees: " + millidegrees);
        }
    }

    /** Whether it is above 60 degrees from the vertical, 120 included, below 30 from the horizontal. */
    public boolean isWide() {
        return millidegrees > WIDEST;
    }

    /** In degrees, rounded up once to a tenth. */
    public BigDecimal fromVertical() {
        return BigDecimal.valueOf(millidegrees, 3).setScale(1, RoundingMode.UP);
    }

    /** Between two opposite legs alike, in degrees, rounded up once to a tenth. */
    public BigDecimal included() {
        return BigDecimal.valueOf(2 * millidegrees, 3).setScale(1, RoundingMode.UP);
    }

    /** What is left to a right angle. */
    public BigDecimal fromHorizontal() {
        return BigDecimal.valueOf(90).subtract(fromVertical());
    }

    /** {@code 60.0 degrees from the vertical, 30.0 from the horizontal}. */
    public String words() {
        return fromVertical() + " degrees from the vertical, " + fromHorizontal() + " from the horizontal";
    }
}
