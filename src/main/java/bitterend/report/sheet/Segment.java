package bitterend.report.sheet;

import java.util.List;

/**
 * Part of a reel that fits a page: rows of its cutting table and the tape beside them.
 *
 * @param rows the rows
 * @param tape the drawing, as high as the rows together
 */
public record Segment(List<Row> rows, TapeDrawing tape) {
    public Segment {
        rows = List.copyOf(rows);
    }
}
