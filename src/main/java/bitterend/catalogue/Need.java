package bitterend.catalogue;

/** What a row asks of a rope, whatever its construction and fibre are called. */
public enum Need {
    /** Not wire. */
    FIBRE("fibre"),
    /** Wire. */
    WIRE("wire"),
    /** Round, not a band. */
    ROUND("round"),
    /** A band. */
    FLAT("flat"),
    /** Its strands can be opened and tucked; of wire the make-up has a say. */
    TUCKED("tucked"),
    /** A tail can be buried in it. */
    BURIED("buried"),
    /** A knot in it does its work. */
    KNOTTED("knotted"),
    /** Heat cuts and seals it. */
    HOT_CUT("cut hot"),
    /** Heat does not cut it. */
    COLD_CUT("cut cold"),
    /** Tucks and knots slip in it. */
    SLIPPERY("slippery"),
    /** Natural fibre alone. */
    NATURAL("natural"),
    /** Neither wire nor natural fibre alone. */
    SYNTHETIC("synthetic");

    private final String word;

    Need(String word) {
        this.word = word;
    }

    /** The word used in files. */
    public String word() {
        return word;
    }

    public boolean isMet(Rope rope) {
        return switch (this) {
            case FIBRE -> !rope.isWire();
            case WIRE -> rope.isWire();
            case ROUND -> !rope.construction().form().flat();
            case FLAT -> rope.construction().form().flat();
            case TUCKED -> rope.construction().can().tucked()
                    && rope.identity().makeUp().tucked();
            case BURIED -> rope.construction().can().buried();
            case KNOTTED -> rope.construction().can().knotted();
            case HOT_CUT -> rope.fibre().nature().hotCut();
            case COLD_CUT -> !rope.isWire() && !rope.fibre().nature().hotCut();
            case SLIPPERY -> rope.fibre().nature().slippery();
            case NATURAL -> rope.fibre().isNatural();
            case SYNTHETIC -> !rope.isWire() && !rope.fibre().isNatural();
        };
    }

    /** {@code rope that can be tucked}, {@code rope that is round}. */
    String expected() {
        return switch (this) {
            case TUCKED, BURIED, KNOTTED, HOT_CUT -> "rope that can be " + word;
            case FIBRE, WIRE -> "rope of " + word;
            default -> "rope that is " + word;
        };
    }
}
