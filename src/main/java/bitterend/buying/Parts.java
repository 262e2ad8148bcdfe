package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.packing.PackingProblem;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Splits the orders in hand into ropes that have nothing to do with one another: what is bought of one does not change
 * what the other costs. Ropes linked by a substitute or a matched set stay together.
 */
final class Parts {
    private final Map<String, String> parent = new HashMap<>();

    private Parts() {}

    /** The parts with at least one piece that is not to be cut from a customer's own rope, by their first rope. */
    static List<Orders> of(Orders orders) {
        Parts parts = new Parts();
        Map<String, String> ropeOfSet = new HashMap<>();
        List<Piece> wanted =
                orders.day().pieces().stream().filter(piece -> !piece.ownRope()).toList();
        for (Piece piece : wanted) {
            piece.choices().forEach(choice -> parts.link(piece.orderedRope(), choice.rope()));
            if (piece.isMatched()) {
                parts.link(
                        ropeOfSet.computeIfAbsent(piece.matching().set(), set -> piece.orderedRope()),
                        piece.orderedRope());
            }
        }
        Map<String, List<Piece>> byRoot = wanted.stream()
                .collect(Collectors.groupingBy(
                        piece -> parts.root(piece.orderedRope()), TreeMap::new, Collectors.toList()));
        List<Orders> split = new ArrayList<>();
        byRoot.forEach((root, pieces) -> split.add(parts.part(orders, root, pieces)));
        return split;
    }

    private Orders part(Orders orders, String root, List<Piece> pieces) {
        PackingProblem day = orders.day();
        Set<String> ids = pieces.stream().map(Piece::id).collect(Collectors.toSet());
        List<Reel> reels = day.reels().stream()
                .filter(reel -> root(reel.rope()).equals(root))
                .filter(reel -> !reel.custody().isCustomersOwn())
                .toList();
        PackingProblem part = new PackingProblem(
                day.day(),
                only(day.ropes(), root),
                pieces,
                reels,
                only(day.values(), root),
                day.prices(),
                day.pins().stream().filter(pin -> ids.contains(pin.piece())).toList(),
                Map.of());
        return new Orders(
                part,
                orders.onOrder().stream()
                        .filter(coming -> root(coming.rope()).equals(root))
                        .toList(),
                orders.offers().stream()
                        .filter(offer -> root(offer.rope()).equals(root))
                        .toList());
    }

    private <V> Map<String, V> only(Map<String, V> byRope, String root) {
        return byRope.entrySet().stream()
                .filter(entry -> root(entry.getKey()).equals(root))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private void link(String a, String b) {
        String rootA = root(a);
        String rootB = root(b);
        int order = rootA.compareTo(rootB);
        if (order != 0) {
            parent.put(order < 0 ? rootB : rootA, order < 0 ? rootA : rootB);
        }
    }

    private String root(String rope) {
        String up = rope;
        for (String next = parent.get(up); next != null; next = parent.get(up)) {
            up = next;
        }
        return up;
    }
}
