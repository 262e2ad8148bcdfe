package bitterend.packing;

import bitterend.demand.Piece;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * On which day each reel of a plan is cut. A reel is cut, with all that the plan puts on it, on the first day on which one of
 * its pieces must be cut: what shares it is cut ahead. A reel that is to be used by an earlier day is cut on the last working
 * day up to that, and the plan may bring any forward to a day before. What is not cut today is a promise; it is planned again
 * before its day. A reel whose sheet is out is cut today, whatever is on it.
 */
public final class CutDays {
    private final LocalDate today;
    private final WorkingDays working;
    private final Map<String, Piece> pieces = new HashMap<>();
    private final Set<String> out = new HashSet<>();
    private final Map<String, LocalDate> useBy = new HashMap<>();

    public CutDays(PackingProblem problem) {
        today = problem.day();
        working = new WorkingDays(problem.calendar());
        problem.pieces().forEach(piece -> pieces.put(piece.id(), piece));
        problem.pins().stream().filter(Pin::isIssued).forEach(pin -> out.add(pin.reel()));
        problem.reels().forEach(reel -> useBy.put(reel.id(), reel.papers().useBy()));
    }

    /** The last working day on which a piece may be cut; today for what is overdue or has no day. */
    public LocalDate lastFor(Piece piece) {
        LocalDate by = working.cutBy(piece);
        return by.equals(LocalDate.MAX) ? today : lastUpTo(by);
    }

    /** The last working day up to a day, today where that has passed. */
    private LocalDate lastUpTo(LocalDate by) {
        if (!by.isAfter(today)) {
            return today;
        }
        LocalDate day = working.lastUpTo(by);
        return day.isBefore(today) ? today : day;
    }

    /** The same of a cut of the plan. */
    public LocalDate lastFor(Cut cut) {
        Piece piece = pieces.get(cut.piece());
        if (piece == null) {
            throw new IllegalArgumentException("no piece " + cut.piece());
        }
        return lastFor(piece);
    }

    /** The day on which a reel is cut. */
    public LocalDate of(ReelDraw draw) {
        return out.contains(draw.reel()) ? today : draw.isBroughtForward() ? draw.forward() : askedFor(draw);
    }

    /** The day on which a reel would be cut if nothing brought it forward. */
    public LocalDate askedFor(ReelDraw draw) {
        LocalDate first = first(draw);
        LocalDate last = lastOf(draw.reel());
        return last.isBefore(first) ? last : first;
    }

    /** Whether it would be cut before any of its pieces must be, since the reel is to be used by then. */
    public boolean isForItsUseBy(ReelDraw draw) {
        return lastOf(draw.reel()).isBefore(first(draw));
    }

    private LocalDate first(ReelDraw draw) {
        return out.contains(draw.reel())
                ? today
                : draw.cuts().stream()
                        .map(this::lastFor)
                        .min(LocalDate::compareTo)
                        .orElse(today);
    }

    /** The last working day on which a reel may be cut; {@link LocalDate#MAX} where it has none. */
    private LocalDate lastOf(String reel) {
        LocalDate by = useBy.getOrDefault(reel, LocalDate.MAX);
        return by.equals(LocalDate.MAX) ? by : lastUpTo(by);
    }

    /** Whether it is cut today; else it is a promise. */
    public boolean isToday(ReelDraw draw) {
        return of(draw).equals(today);
    }
}
