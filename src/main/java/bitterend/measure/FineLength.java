package bitterend.measure;

/**
 * A length inside a derivation, in 1/10,000 mm: sixteenths of an inch (1.5875 mm) and thousandths of an inch (0.0254 mm)
 * are exact, so the lines of a derivation add up to the last digit.
 *
 * @param units ten-thousandths of a millimetre
 */
public record FineLength(long units) implements Comparable<FineLength> {
    public static final long UNITS_PER_MM = 10_000;
    public static final FineLength ZERO = new FineLength(0);

    public static FineLength ofMillimetres(long mm) {
        return new FineLength(Math.multiplyExact(mm, UNITS_PER_MM));
    }

    public FineLength plus(FineLength other) {
        return new FineLength(Math.addExact(units, other.units));
    }

    public FineLength minus(FineLength other) {
        return new FineLength(Math.subtractExact(units, other.units));
    }

    public FineLength times(long factor) {
        return new FineLength(Math.multiplyExact(units, factor));
    }

    /** This length times an exact ratio, rounded up to the next unit (0.0001 mm). */
    public FineLength times(Ratio ratio) {
        return new FineLength(ratio.timesRoundedUp(units));
    }

    public boolean isNegative() {
        return units < 0;
    }

    public boolean isPositive() {
        return units > 0;
    }

    /** The smallest multiple of {@code step} that is not shorter. */
    public Length roundedUpTo(Length step) {
        if (!step.isPositive()) {
            throw new IllegalArgumentException("step must be positive: " + step);
        }
        long stepUnits = Math.multiplyExact(step.mm(), UNITS_PER_MM);
        return step.times(-Math.floorDiv(-units, stepUnits));
    }

    /** The smallest multiple of a fine {@code step}, brought up to the next whole millimetre. */
    public Length roundedUpTo(FineLength step) {
        if (!step.isPositive()) {
            throw new IllegalArgumentException("step must be positive: " + step);
        }
        return step.times(-Math.floorDiv(-units, step.units)).roundedUp();
    }

    /** The smallest whole number of millimetres that is not shorter. */
    public Length roundedUp() {
        return roundedUpTo(new Length(1));
    }

    /** To the nearest millimetre; halves go up. */
    public Length toNearestMillimetre() {
        return new Length(Math.floorDiv(Math.addExact(units, UNITS_PER_MM / 2), UNITS_PER_MM));
    }

    /** The largest whole number of millimetres that is not longer. */
    public Length roundedDown() {
        return new Length(Math.floorDiv(units, UNITS_PER_MM));
    }

    @Override
    public int compareTo(FineLength other) {
        return Long.compare(units, other.units);
    }
}
