package bitterend.cli;

import bitterend.demand.Piece;
import bitterend.exchange.OrderLine;
import bitterend.exchange.Shop;
import bitterend.packing.PackingProblem;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the order lines of a plan ask of the splicers. */
final class OrderedWork {
    private OrderedWork() {}

    /** Lines that still ask for what they asked for when the plan was made; marks of any other would be of another rope. */
    static List<OrderLine> asPlanned(Shop shop, PackingProblem problem) {
        Map<String, Piece> then = new HashMap<>();
        problem.pieces().forEach(piece -> then.put(piece.id(), piece));
        return shop.orders().stream()
                .filter(line -> line.demanded().pieces().stream().allMatch(piece -> isAsThen(piece, then)))
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
