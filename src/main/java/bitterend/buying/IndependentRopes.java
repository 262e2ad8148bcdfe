package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.packing.LinkedRopes;
import bitterend.packing.PackingProblem;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Splits the orders in hand into ropes that have nothing to do with one another: what is bought of one does not change
 * what the other costs. Ropes linked by a substitute or a matched set stay together.
 */
final class IndependentRopes {
    private IndependentRopes() {}

    /** The parts with at least one piece that is not to be cut from a customer's own rope, by their first rope. */
    static List<Orders> of(Orders orders) {
        List<Piece> wanted =
                orders.day().pieces().stream().filter(piece -> !piece.ownRope()).toList();
        LinkedRopes ropes = new LinkedRopes(wanted);
        List<Orders> split = new ArrayList<>();
        ropes.groups().forEach((group, pieces) -> split.add(part(orders, ropes, group, pieces)));
        return split;
    }

    private static Orders part(Orders orders, LinkedRopes ropes, String group, List<Piece> pieces) {
        PackingProblem day = orders.day();
        List<Reel> reels = day.reels().stream()
                .filter(reel -> ropes.isIn(group, reel.rope()))
                .filter(reel -> !reel.custody().isCustomersOwn())
                .toList();
        PackingProblem part = day.about(pieces)
                .withEarlier(Map.of())
                .withRack(ropes.only(group, day.ropes()), ropes.only(group, day.values()), reels);
        return orders.part(
                part,
                orders.onOrder().stream()
                        .filter(coming -> ropes.isIn(group, coming.rope()))
                        .toList(),
                orders.offers().stream()
                        .filter(offer -> ropes.isIn(group, offer.rope()))
                        .toList());
    }
}
