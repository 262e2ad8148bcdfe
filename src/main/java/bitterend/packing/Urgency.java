package bitterend.packing;

import bitterend.demand.Piece;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * How much it matters that a piece is planned. Classes come before everything: first priority 1 and what is overdue, then
 * what must be cut on the day, then by the next working day, then within seven days, then later and undated; a piece must be
 * cut by its due day less the days its finishing takes, see {@link WorkingDays#cutBy}. The shop may set the limits of the third and fourth. Within a class a piece weighs 10 less its priority. A matched set is in the class
 * of its most urgent piece and weighs what its pieces weigh together. A piece that rope is held for is in the first class
 * and weighs {@value #HELD} more: nothing is planned in its place.
 */
public final class Urgency {
    /** What a piece weighs more that rope is held for. */
    public static final long HELD = 10_000;

    private final WorkingDays working;
    private final LocalDate day;
    private final LocalDate next;
    private final LocalDate soon;
    private final Map<String, Integer> classOfSet = new HashMap<>();
    private final Set<String> held = new HashSet<>();

    public Urgency(PackingProblem problem) {
        working = new WorkingDays(problem.calendar());
        day = problem.day();
        next = working.ahead(day, problem.calendar().next());
        soon = working.ahead(day, problem.calendar().soon());
        problem.pins().stream().filter(Pin::isOfHeldRope).forEach(pin -> held.add(pin.piece()));
        for (Piece piece : problem.pieces()) {
            if (piece.isMatched()) {
                classOfSet.merge(piece.matching().set(), ownClass(piece), Math::min);
            }
        }
    }

    /** The class of a piece, from 1, the most urgent, to {@link Undone#CLASSES}; that of its set if it has one. */
    public int classOf(Piece piece) {
        int own = ownClass(piece);
        return piece.isMatched() ? classOfSet.getOrDefault(piece.matching().set(), own) : own;
    }

    /** What leaving a piece undone adds to the work left undone. */
    public Undone of(Piece piece) {
        return Undone.of(classOf(piece), weightOf(piece));
    }

    /** Weight of a piece within its class. */
    public long weightOf(Piece piece) {
        return weight(piece) + (held.contains(piece.id()) ? HELD : 0);
    }

    /** The same of a piece that no rope is held for: 10 less its priority, 1 to 9. */
    public static long weight(Piece piece) {
        return 10L - piece.source().priority();
    }

    private int ownClass(Piece piece) {
        LocalDate cutBy = working.cutBy(piece);
        if (piece.source().priority() == 1 || cutBy.isBefore(day) || held.contains(piece.id())) {
            return 1;
        }
        if (cutBy.equals(day)) {
            return 2;
        }
        return !cutBy.isAfter(next) ? 3 : !cutBy.isAfter(soon) ? 4 : Undone.CLASSES;
    }
}
