package bitterend.catalogue;

import java.util.function.Predicate;

/** What a row asks of a rope, whatever its construction and fibre are called. */
public enum Need {
    /** Not wire. */
    FIBRE("fibre", rope -> !rope.isWire()),
    /** Wire. */
    WIRE("wire", Rope::isWire),
    /** Round, not a band. */
    ROUND("round", rope -> !rope.construction().form().flat()),
    /** A band. */
    FLAT("flat", rope -> rope.construction().form().flat()),
    /** Its strands can be opened and tucked; of wire the make-up has a say. */
    TUCKED(
            "tucked",
            rope -> rope.construction().can().tucked()
                    && rope.identity().makeUp().tucked()),
    /** A tail can be buried in it. */
    BURIED("buried", rope -> rope.construction().can().buried()),
    /** A knot in it does its work. */
    KNOTTED("knotted", rope -> rope.construction().can().knotted()),
    /** Heat cuts and seals it. */
    HOT_CUT("cut hot", rope -> rope.fibre().nature().hotCut()),
    /** Heat does not cut it. */
    COLD_CUT("cut cold", rope -> !rope.isWire() && !rope.fibre().nature().hotCut()),
    /** Tucks and knots slip in it. */
    SLIPPERY("slippery", rope -> rope.fibre().nature().slippery()),
    /** Natural fibre alone. */
    NATURAL("natural", rope -> rope.fibre().isNatural()),
    /** Neither wire nor natural fibre alone. */
    SYNTHETIC("synthetic", rope -> !rope.isWire() && !rope.fibre().isNatural());

    private final String word;
    private final Predicate<Rope> asked;

    Need(String word, Predicate<Rope> asked) {
        this.word = word;
        this.asked = asked;
    }

    /** The word used in files. */
    public String word() {
        return word;
    }

    public boolean isMet(Rope rope) {
        return asked.test(rope);
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
