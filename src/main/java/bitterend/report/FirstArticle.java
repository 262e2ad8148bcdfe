package bitterend.report;

import bitterend.demand.Demanded;
import bitterend.demand.EndWork;
import bitterend.demand.Piece;
import bitterend.finding.Finding;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A piece to splice and measure before the others of its kind are cut, since nobody has checked the numbers of its end.
 *
 * @param piece its id: the first of its kind to be cut
 * @param termination id of the end
 * @param rope the rope as ordered
 * @param day the day on which it is cut
 * @param all the pieces of the plan that have that end on that rope, the first among them; at least 2
 */
public record FirstArticle(String piece, String termination, String rope, LocalDate day, List<String> all) {
    public FirstArticle {
        all = List.copyOf(all);
    }

    /** How many pieces have that end on that rope. */
    public int pieces() {
        return all.size();
    }

    /** Of a plan, once for each end and rope, in the order of work; an end of one piece alone waits for nothing. */
    public static List<FirstArticle> of(PlanView view) {
        Map<String, WorkLine> lines = view.byId().lines();
        Map<Kind, List<String>> alike = new LinkedHashMap<>();
        Map<String, LocalDate> days = new HashMap<>();
        for (ReelDraw draw : view.wholePlan()) {
            LocalDate day = view.byId().days().of(draw);
            for (Cut cut : draw.cuts()) {
                days.put(cut.piece(), day);
                WorkLine line = lines.get(cut.piece());
                Piece piece = view.pieces().get(cut.piece());
                if (line != null && piece != null) {
                    ends(line.demanded()).forEach(end -> alike.computeIfAbsent(
                                    new Kind(end.termination(), piece.orderedRope()), kind -> new ArrayList<>())
                            .add(cut.piece()));
                }
            }
        }
        return alike.entrySet().stream()
                .filter(each -> each.getValue().size() > 1)
                .map(each -> new FirstArticle(
                        each.getValue().get(0),
                        each.getKey().termination(),
                        each.getKey().rope(),
                        Objects.requireNonNull(days.get(each.getValue().get(0))),
                        each.getValue()))
                .toList();
    }

    private record Kind(String termination, String rope) {}

    /** Whether a note asks for what pages say in the row of the piece, once for all orders: they leave it out. */
    public static boolean isSaidInItsRow(Finding note) {
        return note.expected().startsWith(Demanded.MAKE_ONE_FIRST);
    }

    /** The ends that nobody has checked, each once though a piece has it twice. */
    private static List<EndWork> ends(Demanded line) {
        Map<String, EndWork> ends = new LinkedHashMap<>();
        line.work().stream().filter(end -> !end.verified()).forEach(end -> ends.putIfAbsent(end.termination(), end));
        return new ArrayList<>(ends.values());
    }
}
