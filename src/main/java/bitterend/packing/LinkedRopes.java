package bitterend.packing;

import bitterend.demand.Piece;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Ropes that have to do with one another, because a piece may be cut from either or a matched set asks for both. Each
 * group is named after its first rope by id.
 */
public final class LinkedRopes {
    private final List<Piece> pieces;
    private final Map<String, String> parent = new HashMap<>();

    /** The ropes as these pieces link them. */
    public LinkedRopes(List<Piece> pieces) {
        this.pieces = List.copyOf(pieces);
        Map<String, String> ropeOfSet = new HashMap<>();
        for (Piece piece : pieces) {
            piece.choices().forEach(choice -> link(piece.orderedRope(), choice.rope()));
            if (piece.isMatched()) {
                String first = ropeOfSet.computeIfAbsent(piece.matching().set(), set -> piece.orderedRope());
                link(first, piece.orderedRope());
            }
        }
    }

    /** The pieces of each group, by its first rope. */
    public Map<String, List<Piece>> groups() {
        return pieces.stream()
                .collect(Collectors.groupingBy(
                        piece -> firstOf(piece.orderedRope()), TreeMap::new, Collectors.toList()));
    }

    /** Whether a rope belongs to a group. */
    public boolean isIn(String group, String rope) {
        return firstOf(rope).equals(group);
    }

    /** What concerns the ropes of a group. */
    public <V> Map<String, V> only(String group, Map<String, V> byRope) {
        return byRope.entrySet().stream()
                .filter(entry -> isIn(group, entry.getKey()))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private String firstOf(String rope) {
        String up = rope;
        for (String next = parent.get(up); next != null; next = parent.get(up)) {
            up = next;
        }
        return up;
    }

    private void link(String a, String b) {
        String firstA = firstOf(a);
        String firstB = firstOf(b);
        int order = firstA.compareTo(firstB);
        if (order != 0) {
            parent.put(order < 0 ? firstB : firstA, order < 0 ? firstA : firstB);
        }
    }
}
