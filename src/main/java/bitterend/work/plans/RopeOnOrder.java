package bitterend.work.plans;

import bitterend.demand.Piece;
import bitterend.measure.Sentence;
import bitterend.packing.CutPlan;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.Unplanned;
import bitterend.packing.explain.Explanation;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The reels that a shop has on order, and for which work that could not be planned one of them would do. */
final class RopeOnOrder {
    /** Pieces of so many lines and sets are looked at; a day that leaves out more has other worries. */
    private static final int MOST = 40;

    private final Explanation explanation;
    private final Map<String, Piece> pieces = new HashMap<>();
    private final Map<String, Sentence> said = new HashMap<>();

    private RopeOnOrder(PackingProblem problem, CutPlan plan) {
        problem.pieces().forEach(piece -> pieces.put(piece.id(), piece));
        explanation = new Explanation(problem, Packing.of(plan.draws()));
    }

    /** The plan with the order that would do named in front of what else would help. */
    static CutPlan named(PackingProblem problem, CutPlan plan) {
        if (problem.arrivals().isEmpty() || plan.unplanned().isEmpty()) {
            return plan;
        }
        RopeOnOrder orders = new RopeOnOrder(problem, plan);
        List<Unplanned> unplanned = plan.unplanned().stream().map(orders::named).toList();
        return plan.withUnplanned(unplanned);
    }

    private Unplanned named(Unplanned piece) {
        Sentence order = orderFor(piece.piece());
        return order.isEmpty()
                ? piece
                : new Unplanned(
                        piece.piece(), piece.reason(), order.and("; or ").and(piece.help()));
    }

    /** Alike for all pieces of a line, or of a set. */
    private Sentence orderFor(String id) {
        Piece piece = Objects.requireNonNull(pieces.get(id), id);
        String key = piece.isMatched()
                ? "set " + piece.matching().set()
                : piece.source().lineId();
        if (!said.containsKey(key) && said.size() >= MOST) {
            return Sentence.NONE;
        }
        return said.computeIfAbsent(key, first -> explanation.onOrder(id).stream()
                .findFirst()
                .map(Reason::sentence)
                .orElse(Sentence.NONE));
    }
}
