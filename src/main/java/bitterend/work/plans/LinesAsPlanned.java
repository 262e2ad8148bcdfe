package bitterend.work.plans;

import bitterend.demand.Piece;
import bitterend.exchange.OrderLine;
import bitterend.packing.PackingProblem;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The order lines that still ask for what they asked for when a plan was made: marks of any other would be of another rope. */
public final class LinesAsPlanned {
    private LinesAsPlanned() {}

    /**
     * Those of an order book.
     *
     * @param orders its lines as they are now
     * @param then the question that the plan answers
     */
    public static List<OrderLine> of(List<OrderLine> orders, PackingProblem then) {
        Map<String, Piece> was = new HashMap<>();
        then.pieces().forEach(piece -> was.put(piece.id(), piece));
        return orders.stream()
                .filter(line -> line.demanded().pieces().stream().allMatch(piece -> isAsThen(piece, was)))
                .toList();
    }

    private static boolean isAsThen(Piece piece, Map<String, Piece> then) {
        Piece was = then.get(piece.id());
        return was == null
                || (was.hasEndsOf(piece)
                        && was.finished().equals(piece.finished())
                        && was.choices().equals(piece.choices()));
    }
}
