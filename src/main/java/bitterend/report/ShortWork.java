package bitterend.report;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Unplanned;
import bitterend.packing.Urgency;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Work that could not be planned, alike pieces together.
 *
 * @param rope the rope as ordered
 * @param cut cut length of each piece
 * @param why the reason, without the name of the piece
 * @param help what would help one of them, or their set
 */
public record ShortWork(String rope, Length cut, Sentence why, Sentence help) {

    /** The ids of the pieces that lack the same for the same reason, the most urgent first. */
    public static Map<ShortWork, List<String>> of(PlanView view) {
        return of(view, unplanned -> true);
    }

    /** The same of some of them. */
    public static Map<ShortWork, List<String>> of(PlanView view, Predicate<Unplanned> which) {
        Urgency urgency = new Urgency(view.problem());
        Map<ShortWork, List<Piece>> alike = new LinkedHashMap<>();
        view.plan().unplanned().stream()
                .filter(which)
                .sorted(Comparator.comparing((Unplanned each) -> urgency.of(piece(view, each)))
                        .reversed())
                .forEach(each -> alike.computeIfAbsent(work(view, each), key -> new ArrayList<>())
                        .add(piece(view, each)));
        Map<ShortWork, List<String>> told = new LinkedHashMap<>();
        alike.forEach((work, pieces) ->
                told.put(work.of(pieces), pieces.stream().map(Piece::id).toList()));
        return told;
    }

    private static Piece piece(PlanView view, Unplanned unplanned) {
        Piece piece = view.pieces().get(unplanned.piece());
        if (piece == null) {
            throw new IllegalArgumentException("no piece " + unplanned.piece());
        }
        return piece;
    }

    private static ShortWork work(PlanView view, Unplanned unplanned) {
        Piece piece = piece(view, unplanned);
        return new ShortWork(piece.orderedRope(), piece.cut(), reason(unplanned), unplanned.help());
    }

    /** What helps one of several pieces does not help them all; a set is helped as a whole. */
    private ShortWork of(List<Piece> pieces) {
        boolean several = pieces.size() > 1 && !pieces.get(0).isMatched();
        return several
                ? new ShortWork(rope, cut, why, Sentence.of("for one of them, ").and(help))
                : this;
    }

    private static Sentence reason(Unplanned unplanned) {
        return unplanned.reason().sentence().without(unplanned.piece() + ": ");
    }
}
