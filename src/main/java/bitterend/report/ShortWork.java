package bitterend.report;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Unplanned;
import java.util.ArrayList;
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
 * @param help what would help
 */
public record ShortWork(String rope, Length cut, Sentence why, Sentence help) {

    /** The ids of the pieces that lack the same for the same reason, in the order of the plan. */
    public static Map<ShortWork, List<String>> of(PlanView view) {
        return of(view, unplanned -> true);
    }

    /** The same of some of them. */
    public static Map<ShortWork, List<String>> of(PlanView view, Predicate<Unplanned> which) {
        Map<String, Piece> pieces = view.pieces();
        Map<ShortWork, List<String>> alike = new LinkedHashMap<>();
        for (Unplanned unplanned :
                view.plan().unplanned().stream().filter(which).toList()) {
            Piece piece = pieces.get(unplanned.piece());
            if (piece == null) {
                throw new IllegalArgumentException("no piece " + unplanned.piece());
            }
            ShortWork work = new ShortWork(piece.orderedRope(), piece.cut(), reason(unplanned), unplanned.help());
            alike.computeIfAbsent(work, key -> new ArrayList<>()).add(unplanned.piece());
        }
        return alike;
    }

    private static Sentence reason(Unplanned unplanned) {
        return unplanned.reason().sentence().without(unplanned.piece() + ": ");
    }
}
