package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.packing.LinkedRopes;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Splits a day into parts that have nothing to do with one another: ropes that are linked by an allowed substitute, or by
 * a matched set, stay together. No soft rule reaches from one rope to another, so the costs add up.
 */
final class RopeGroups {
    private RopeGroups() {}

    /** The parts with at least one piece, by the first rope of each. */
    static List<PackingProblem> of(PackingProblem problem) {
        LinkedRopes ropes = new LinkedRopes(problem.pieces());
        List<PackingProblem> parts = new ArrayList<>();
        ropes.groups().forEach((group, pieces) -> parts.add(part(problem, ropes, group, pieces)));
        return parts;
    }

    /** The answers of all parts together. */
    static Packing together(List<Packing> parts) {
        Map<String, bitterend.packing.RunId> places = new TreeMap<>();
        parts.forEach(part -> places.putAll(part.places()));
        return new Packing(places);
    }

    private static PackingProblem part(PackingProblem problem, LinkedRopes ropes, String group, List<Piece> pieces) {
        List<Reel> reels = problem.reels().stream()
                .filter(reel -> ropes.isIn(group, reel.rope()))
                .toList();
        return problem.about(pieces)
                .withRack(ropes.only(group, problem.ropes()), ropes.only(group, problem.values()), reels);
    }
}
