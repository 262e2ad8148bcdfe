package bitterend.report;

import bitterend.demand.Demanded;
import bitterend.demand.EndWork;
import bitterend.demand.Piece;
import bitterend.packing.Cut;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A piece to splice and measure before the others of its kind are cut, since nobody has checked the numbers of its end.
 *
 * @param piece its id: the first of its kind to be cut
 * @param termination id of the end
 * @param rope the rope as ordered
 * @param pieces how many pieces of the plan have that end on that rope; at least 2
 */
public record FirstArticle(String piece, String termination, String rope, int pieces) {

    /** Of a plan, once for each end and rope, in the order of work; an end of one piece alone waits for nothing. */
    public static List<FirstArticle> of(PlanView view) {
        Map<String, WorkLine> lines = view.byId().lines();
        Map<String, FirstArticle> met = new LinkedHashMap<>();
        view.draws().stream()
                .flatMap(draw -> draw.cuts().stream())
                .map(Cut::piece)
                .forEach(id -> {
                    WorkLine line = lines.get(id);
                    Piece piece = view.pieces().get(id);
                    if (line != null && piece != null) {
                        ends(line.demanded())
                                .forEach(end -> met.merge(
                                        end.termination() + " " + piece.orderedRope(),
                                        new FirstArticle(id, end.termination(), piece.orderedRope(), 1),
                                        FirstArticle::andOneMore));
                    }
                });
        return met.values().stream().filter(first -> first.pieces() > 1).toList();
    }

    private FirstArticle andOneMore(FirstArticle other) {
        return new FirstArticle(piece, termination, rope, pieces + other.pieces());
    }

    /** The ends that nobody has checked, each once though a piece has it twice. */
    private static List<EndWork> ends(Demanded line) {
        Map<String, EndWork> ends = new LinkedHashMap<>();
        line.work().stream().filter(end -> !end.verified()).forEach(end -> ends.putIfAbsent(end.termination(), end));
        return new ArrayList<>(ends.values());
    }
}
