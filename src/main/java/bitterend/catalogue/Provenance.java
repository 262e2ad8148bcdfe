package bitterend.catalogue;

/**
 * Where a number comes from.
 *
 * @param source handbook, regulation, shop record; empty for plain arithmetic
 * @param grade how far it can be trusted
 * @param verified whether the shop has confirmed it on its own work, or it needs no confirming
 */
public record Provenance(String source, Grade grade, boolean verified) {
    /** What the order itself states. */
    public static final Provenance ORDER = new Provenance("", Grade.ORDER, true);

    /** Geometry and arithmetic. */
    public static final Provenance ARITHMETIC = new Provenance("", Grade.DERIVED, true);
}
