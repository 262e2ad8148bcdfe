package bitterend.packing;

import bitterend.demand.Piece;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * How far a plan looks ahead.
 *
 * @param until pieces that must be cut by this day are planned; {@link LocalDate#MAX} for all there are
 * @param later how many pieces are left for later plans, since they need not be cut before
 */
public record Horizon(LocalDate until, int later) {
    /** Every piece, whenever it must be cut. */
    public static final Horizon ALL = new Horizon(LocalDate.MAX, 0);

    public Horizon {
        if (later < 0) {
            throw new IllegalArgumentException("later: " + later);
        }
    }

    /** Whether a piece is looked at for itself: it comes first, has no day, or must be cut in time. */
    public boolean holds(Piece piece, ShopCalendar calendar) {
        if (piece.source().priority() == 1) {
            return true;
        }
        LocalDate cutBy = new WorkingDays(calendar).cutBy(piece);
        return cutBy.equals(LocalDate.MAX) || !cutBy.isAfter(until);
    }

    /**
     * The question without what may wait. Matched sets stay whole where any piece of theirs may not wait, or is cut already;
     * what is pinned stays.
     *
     * @param atTheBench ids of further pieces that stay, since sheets at the bench have them
     */
    public static PackingProblem near(PackingProblem all, LocalDate until, Set<String> atTheBench) {
        Horizon horizon = new Horizon(until, 0);
        Set<String> pinned = new HashSet<>(atTheBench);
        all.pins().forEach(pin -> pinned.add(pin.piece()));
        Set<String> sets = new HashSet<>();
        Set<String> near = new HashSet<>();
        for (Piece piece : all.pieces()) {
            boolean begun = !piece.matching().begun().isEmpty();
            if (begun || pinned.contains(piece.id()) || horizon.holds(piece, all.calendar())) {
                near.add(piece.id());
                if (piece.isMatched()) {
                    sets.add(piece.matching().set());
                }
            }
        }
        List<Piece> some = all.pieces().stream()
                .filter(piece -> near.contains(piece.id())
                        || (piece.isMatched() && sets.contains(piece.matching().set())))
                .toList();
        int later = all.pieces().size() - some.size();
        return all.about(some).looking(new Horizon(until, later));
    }
}
