package bitterend.packing.check;

import bitterend.demand.Piece;
import bitterend.packing.PackingProblem;
import bitterend.packing.ShopCalendar;
import bitterend.packing.Undone;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;

/**
 * The checker's own reading of docs/rules.md, "work left undone": which class a piece is in and what it weighs there. It
 * counts days from the day of the plan to the day the piece is due, where the engines look for the last day of a class.
 */
public final class UndoneWork {
    private final PackingProblem problem;
    private final LastDay lastDay;
    private final Map<String, Integer> hastiest = new HashMap<>();
    private final Map<String, String> heldFor = new HashMap<>();

    public UndoneWork(PackingProblem problem) {
        this.problem = problem;
        lastDay = new LastDay(problem.calendar());
        problem.pins().forEach(pin -> heldFor.merge(pin.piece(), pin.heldFor(), (one, other) -> one + other));
        problem.pieces().stream().filter(Piece::isMatched).forEach(this::readSet);
    }

    private void readSet(Piece piece) {
        String set = piece.matching().set();
        hastiest.put(set, Math.min(alone(piece), hastiest.getOrDefault(set, Undone.CLASSES)));
    }

    /** The class a piece is undone in, from 1 to 5. */
    public int classOf(Piece piece) {
        return piece.isMatched() ? hastiest.getOrDefault(piece.matching().set(), Undone.CLASSES) : alone(piece);
    }

    /** Its weight there. */
    public long weight(Piece piece) {
        return byPriority(piece) + (isHeldFor(piece) ? 10_000 : 0);
    }

    private boolean isHeldFor(Piece piece) {
        return !heldFor.getOrDefault(piece.id(), "").isEmpty();
    }

    private static long byPriority(Piece piece) {
        return switch (piece.source().priority()) {
            case 1 -> 9;
            case 9 -> 1;
            default -> 10L - piece.source().priority();
        };
    }

    /** The piece as work left undone. */
    public Undone of(Piece piece) {
        return Undone.of(classOf(piece), weight(piece));
    }

    private int alone(Piece piece) {
        long days = ChronoUnit.DAYS.between(problem.day(), lastDay.of(piece));
        if (days < 0 || piece.source().priority() == 1 || isHeldFor(piece)) {
            return 1;
        }
        if (days == 0) {
            return 2;
        }
        if (isWithin(problem.calendar().next(), days)) {
            return 3;
        }
        return isWithin(problem.calendar().soon(), days) ? 4 : 5;
    }

    /** Whether a day so many days ahead comes no later than a limit. */
    private boolean isWithin(ShopCalendar.Ahead limit, long days) {
        if (!limit.working()) {
            return days <= limit.days();
        }
        int working = 0;
        for (long d = 1; d < days && working < limit.days(); d++) {
            working += lastDay.isWorking(problem.day().plusDays(d)) ? 1 : 0;
        }
        return working < limit.days();
    }
}
