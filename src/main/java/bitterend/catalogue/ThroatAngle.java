package bitterend.catalogue;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The angle between the two legs of an eye where they meet.
 *
 * @param millidegrees thousandths of a degree; from 0 to 180 degrees
 */
public record ThroatAngle(long millidegrees) implements Comparable<ThroatAngle> {
    public ThroatAngle {
        if (millidegrees < 0 || millidegrees > 180_000) {
            throw new IllegalArgumentException("throat angle from 0 to 180 degrees: " + millidegrees);
        }
    }

    public static ThroatAngle ofDegrees(long degrees) {
        return new ThroatAngle(Math.multiplyExact(degrees, 1000L));
    }

    public boolean isWiderThan(ThroatAngle other) {
        return compareTo(other) > 0;
    }

    /** {@code 60.2 degrees}, to the nearest tenth. */
    public String words() {
        return BigDecimal.valueOf(millidegrees, 3)
                        .setScale(1, RoundingMode.HALF_UP)
                        .toPlainString() + " degrees";
    }

    @Override
    public int compareTo(ThroatAngle other) {
        return Long.compare(millidegrees, other.millidegrees);
    }
}
