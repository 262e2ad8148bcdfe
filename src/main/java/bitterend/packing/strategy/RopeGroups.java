package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Splits a day into parts that have nothing to do with one another: ropes that are linked by an allowed substitute, or by
 * a matched set, stay together. No soft rule reaches from one rope to another, so the costs add up.
 */
final class RopeGroups {
    private final Map<String, String> parent = new HashMap<>();

    private RopeGroups() {}

    /** The parts with at least one piece, by the first rope of each. */
    static List<PackingProblem> of(PackingProblem problem) {
        RopeGroups groups = new RopeGroups();
        Map<String, String> ropeOfSet = new HashMap<>();
        for (Piece piece : problem.pieces()) {
            piece.choices().forEach(choice -> groups.link(piece.orderedRope(), choice.rope()));
            if (piece.isMatched()) {
                String first = ropeOfSet.computeIfAbsent(piece.matching().set(), set -> piece.orderedRope());
                groups.link(first, piece.orderedRope());
            }
        }
        Map<String, List<Piece>> byGroup = problem.pieces().stream()
                .collect(Collectors.groupingBy(
                        piece -> groups.root(piece.orderedRope()), TreeMap::new, Collectors.toList()));
        List<PackingProblem> parts = new ArrayList<>();
        byGroup.forEach((root, pieces) -> parts.add(groups.part(problem, root, pieces)));
        return parts;
    }

    /** The answers of all parts together. */
    static Packing together(List<Packing> parts) {
        Map<String, bitterend.packing.RunId> places = new TreeMap<>();
        parts.forEach(part -> places.putAll(part.places()));
        return new Packing(places);
    }

    private PackingProblem part(PackingProblem problem, String root, List<Piece> pieces) {
        Set<String> ids = new HashSet<>();
        pieces.forEach(piece -> ids.add(piece.id()));
        Map<String, String> earlier = new HashMap<>(problem.earlier());
        earlier.keySet().retainAll(ids);
        List<Pin> pins =
                problem.pins().stream().filter(pin -> ids.contains(pin.piece())).toList();
        return new PackingProblem(
                problem.day(),
                only(problem.ropes(), root),
                pieces,
                problem.reels().stream()
                        .filter(reel -> root(reel.rope()).equals(root))
                        .toList(),
                only(problem.values(), root),
                problem.prices(),
                pins,
                earlier);
    }

    private <V> Map<String, V> only(Map<String, V> byRope, String root) {
        return byRope.entrySet().stream()
                .filter(entry -> root(entry.getKey()).equals(root))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private void link(String a, String b) {
        String rootA = root(a);
        String rootB = root(b);
        if (rootA.compareTo(rootB) < 0) {
            parent.put(rootB, rootA);
        } else if (rootB.compareTo(rootA) < 0) {
            parent.put(rootA, rootB);
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
