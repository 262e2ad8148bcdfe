package bitterend.report.sheet;

import bitterend.report.Mark;
import bitterend.report.RowWords;

/**
 * One row of a cutting table on a sheet.
 *
 * @param mark the mark it stands for
 * @param number 1 for the first piece cut from the reel; 0 for anything but a cut
 * @param at reading of the counter, as printed
 * @param length rope it concerns, as printed; empty for none
 * @param left rope left on the reel, as printed
 * @param words what is said in it
 * @param height height in CSS pixels, enough for its words
 */
public record Row(Mark mark, int number, String at, String length, String left, RowWords.Words words, int height) {

    /** The same under a row that says who wants it. */
    Row under(Row above, RowHeights heights) {
        RowWords.Words said = words.under(above.words);
        return new Row(mark, number, at, length, left, said, heights.of(mark, said));
    }

    /** Whether a piece is cut here: the row to tick off. */
    public boolean isCut() {
        return mark.kind() == Mark.Kind.CUT;
    }

    /** The kind as a name for styles: {@code lead-trim}. */
    public String style() {
        return mark.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
