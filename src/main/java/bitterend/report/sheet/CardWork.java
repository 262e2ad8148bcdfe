package bitterend.report.sheet;

import bitterend.demand.Assembly;
import bitterend.demand.Demanded;
import bitterend.demand.Piece;

/**
 * One order line and what it asks of the bench.
 *
 * @param assembly the line as ordered
 * @param demanded its pieces, their lengths and marks
 */
public record CardWork(Assembly assembly, Demanded demanded) {
    /** {@code ORDER/LINE}. */
    String id() {
        Piece.Source source = assembly.ordered().source();
        return source.order() + "/" + source.line();
    }
}
