package bitterend.serve;

import bitterend.report.sheet.Row;

/**
 * A cut that is still to be made.
 *
 * @param row its row of the sheet
 * @param after the piece that is cut before it off the same reel; empty for the first
 */
public record NextCut(Row row, String after) {
    /** The piece that is cut. */
    public String piece() {
        return row.mark().piece();
    }
}
