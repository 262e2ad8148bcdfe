package bitterend.catalogue;

/**
 * One mark of a splice layout, by its plain name.
 *
 * @param name what happens there: tail mark, throat mark, tool comes out, slip knot
 * @param on what it is set on: rope, cover, core, strands
 * @param from the mark it is measured from, or {@code cut end}
 * @param distance how far from there, away from the cut end
 * @param purpose what it is for, in a few words; empty for nothing
 * @param place whether the distance holds on every piece
 */
public record LayoutMark(String name, String on, String from, Allowance distance, String purpose, Place place) {
    /** Where every layout starts. */
    public static final String CUT_END = "cut end";

    /** The knot that holds core and cover together beyond the splice while it is made. */
    public static final String SLIP_KNOT = "slip knot";

    /** Where a drawn core is marked; it has slipped in its cover by then, and no figure from the cut end holds for it. */
    public static final String CORE = "core";

    /** Whether the distance of a mark holds on every piece. */
    public enum Place {
        /** It lies there, or the end cannot be made. */
        FIXED("fixed"),
        /** Nearer on a short piece: no further than the rope that is still free. */
        FREE_ROPE("free rope");

        private final String word;

        Place(String word) {
            this.word = word;
        }

        /** The word used in files. */
        public String word() {
            return word;
        }
    }

    /** Whether it is set on a core that has been drawn out of its cover. */
    public boolean isOnCore() {
        return on.equals(CORE);
    }
}
