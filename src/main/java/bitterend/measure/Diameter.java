package bitterend.measure;

/**
 * The diameter of a rope, a pin or a fitting, in 1/10,000 mm, the unit of {@link FineLength}.
 *
 * @param units ten-thousandths of a millimetre; zero stands for "no fitting"
 */
public record Diameter(long units) implements Comparable<Diameter> {
    public static final Diameter NONE = new Diameter(0);

    public Diameter {
        if (units < 0) {
            throw new IllegalArgumentException("a diameter cannot be negative: " + units);
        }
    }

    public static Diameter ofMillimetres(long mm) {
        return new Diameter(Math.multiplyExact(mm, FineLength.UNITS_PER_MM));
    }

    public FineLength asLength() {
        return new FineLength(units);
    }

    /** So many diameters as a length, rounded up to the next 0.0001 mm. */
    public FineLength times(Ratio ratio) {
        return asLength().times(ratio);
    }

    @Override
    public int compareTo(Diameter other) {
        return Long.compare(units, other.units);
    }
}
