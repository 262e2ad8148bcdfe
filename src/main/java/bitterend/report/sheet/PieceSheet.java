package bitterend.report.sheet;

import java.util.List;

/**
 * How the length of an order line came about, every value as it is printed.
 *
 * @param title the order line and who it is for
 * @param unit unit of the amounts
 * @param ends the two ends of a piece, end A first
 * @param finished the finished length
 * @param lengths a derivation for each length and rope
 * @param layouts how the ends are marked
 * @param cautions what is said on every page
 */
public record PieceSheet(
        String title,
        String unit,
        List<DrawnEnd> ends,
        String finished,
        List<DerivedLength> lengths,
        List<LayoutSheet> layouts,
        List<String> cautions) {
    public PieceSheet {
        ends = List.copyOf(ends);
        lengths = List.copyOf(lengths);
        layouts = List.copyOf(layouts);
        cautions = List.copyOf(cautions);
    }

    /**
     * One end as it is drawn.
     *
     * @param eye whether it has an eye
     * @param fitting whether it has a metal end
     * @param tail whether a tail runs back into the standing part
     * @param amounts what it adds and takes, such as {@code tail 252 mm}
     */
    public record DrawnEnd(boolean eye, boolean fitting, boolean tail, List<String> amounts) {
        public DrawnEnd {
            amounts = List.copyOf(amounts);
        }
    }

    /**
     * A derivation.
     *
     * @param heading how many pieces of which length from which rope
     * @param pieces the pieces
     * @param lines its lines, the rounding last
     * @param cut the sum, in the unit of the lines
     * @param length the cut length as it is cut
     * @param notes its sources, numbered, and what else there is to say
     */
    public record DerivedLength(
            String heading, String pieces, List<Line> lines, String cut, String length, List<String> notes) {
        public DerivedLength {
            lines = List.copyOf(lines);
            notes = List.copyOf(notes);
        }
    }

    /** A line of a derivation. */
    public record Line(String label, String amount, String formula, String source) {}
}
