package bitterend.report.sheet;

import bitterend.demand.Assembly;
import bitterend.demand.Demanded;
import bitterend.demand.Piece;
import java.util.Map;

/**
 * One order line and what it asks of the bench.
 *
 * @param assembly the line as ordered
 * @param demanded its pieces, their lengths and marks
 * @param measured what was measured of its pieces that are made, in words, by piece
 */
public record CardWork(Assembly assembly, Demanded demanded, Map<String, String> measured) {
    public CardWork {
        measured = Map.copyOf(measured);
    }

    /** Of which no piece is made yet. */
    public CardWork(Assembly assembly, Demanded demanded) {
        this(assembly, demanded, Map.of());
    }

    /** {@code ORDER/LINE}. */
    String id() {
        Piece.Source source = assembly.ordered().source();
        return source.order() + "/" + source.line();
    }
}
