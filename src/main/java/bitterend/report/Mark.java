package bitterend.report;

import bitterend.measure.Length;

/**
 * One mark on the tape of a reel, and the row beside it. Readings are of a counter that stands at zero at the clean end.
 *
 * @param kind what is done there
 * @param at the reading
 * @param length the rope it concerns: the piece, the trim, the coil, the flaw
 * @param left rope left on the reel behind it, inner wraps not counted
 * @param piece id of the piece; empty for anything but a cut
 * @param words the ends of a piece, or what is done
 * @param before what to do at the mark before the cut; may be empty
 */
public record Mark(Kind kind, Length at, Length length, Length left, String piece, String words, String before) {

    /** What happens at a mark. */
    public enum Kind {
        /** The worn end comes off. */
        LEAD_TRIM,
        /** The clean end: the counter is set to zero. */
        ZERO,
        /** A piece is cut. */
        CUT,
        /** A stretch with a flaw comes off. */
        FLAW,
        /** A coil comes off and goes back to the rack. */
        KEPT,
        /** An offcut not worth keeping comes off. */
        SCRAP,
        /** Cutting stops here; the rest stays on the reel. */
        STAYS,
        /** The rope that can be counted on ends here. */
        COUNT_FIRST,
        /** The inner wraps begin. */
        INNER_WRAPS
    }
}
