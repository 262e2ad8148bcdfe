package bitterend.catalogue;

/**
 * One mark of a splice layout, by its plain name.
 *
 * @param name tail mark, throat mark, core mark one, slip knot
 * @param on what it is set on: rope, cover, core, strands
 * @param from the mark it is measured from, or {@code cut end}
 * @param distance how far from there, away from the cut end
 */
public record LayoutMark(String name, String on, String from, Allowance distance) {
    /** Where every layout starts. */
    public static final String CUT_END = "cut end";
}
