package bitterend.serve;

import bitterend.report.Fact;
import bitterend.report.sheet.Row;
import java.util.List;

/**
 * A cut that is still to be made, with what who cuts must know of its piece.
 *
 * @param row its row of the sheet
 * @param after the piece that is cut before it off the same reel; empty for the first
 * @param ends how its ends are made
 * @param facts who wants it, by when, which of its line it is, what the order says besides
 * @param set its matched set and how close that stays together; empty for a piece that stands alone
 * @param mates the other pieces of the set, those of one reel together: where they are cut, and whether they are
 * @param card which of the cards on the page is its own; {@link CutCards#NONE} where none is
 */
public record NextCut(Row row, String after, String ends, List<Fact> facts, String set, List<String> mates, int card) {
    public NextCut {
        facts = List.copyOf(facts);
        mates = List.copyOf(mates);
    }

    /** Where its tag is printed. */
    public String tag() {
        return PrintScreen.TAG + Sent.path(piece());
    }

    /** The piece that is cut. */
    public String piece() {
        return row.mark().piece();
    }
}
