package bitterend.packing;

import bitterend.demand.Piece;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * How far a plan looks ahead.
 *
 * @param until pieces that must be cut by this day are planned; {@link LocalDate#MAX} for all there are
 * @param later how many pieces are left for later plans, since they need not be cut before
 * @param asked how far it was to look; later than {@code until} where the day alone leaves less first-class work undone
 * @param waiting pieces that are not cut ahead while rope is short, by rope; the plan does not look at them
 */
public record Horizon(LocalDate until, int later, LocalDate asked, List<Waiting> waiting) {
    /** Every piece, whenever it must be cut. */
    public static final Horizon ALL = new Horizon(LocalDate.MAX, 0);

    public Horizon {
        waiting = List.copyOf(waiting);
        if (later < 0 || asked.isBefore(until)) {
            throw new IllegalArgumentException("later: " + later + ", until " + until + ", asked " + asked);
        }
    }

    /** As far as it was to look, and nothing waits. */
    public Horizon(LocalDate until, int later) {
        this(until, later, until, List.of());
    }

    /**
     * Pieces of a rope that wait for more of it.
     *
     * @param rope id of the rope
     * @param pieces ids
     * @param until the day from which more of it is counted on; {@link LocalDate#MAX} where nobody knows
     * @param order the number of the order of reels that comes then; empty where none is on order
     * @param lines the order lines they are of
     */
    public record Waiting(String rope, List<String> pieces, LocalDate until, String order, List<Line> lines) {
        public Waiting {
            pieces = List.copyOf(pieces);
            lines = List.copyOf(lines);
        }

        /** Of order lines that are not told. */
        public Waiting(String rope, List<String> pieces, LocalDate until, String order) {
            this(rope, pieces, until, order, List.of());
        }

        /** The order lines of these that the rope in the house and on order does not hold whole. */
        public List<Line> undone() {
            return lines.stream().filter(line -> !line.undone().isEmpty()).toList();
        }
    }

    /**
     * What waits of an order line.
     *
     * @param line as people name it
     * @param due the day it is wanted; {@link LocalDate#MAX} when none was given
     * @param pieces how many of it wait
     * @param undone ids of those that find no rope in the house or on order, where all that is looked at is planned together
     */
    public record Line(String line, LocalDate due, int pieces, List<String> undone) {
        public Line {
            undone = List.copyOf(undone);
        }
    }

    /** Whether all that waits would find rope in the house or on order. */
    public boolean isRopeForWhatWaits() {
        return waiting.stream().allMatch(each -> each.undone().isEmpty());
    }

    /** Whether today was planned alone, though it was to look further. */
    public boolean isTodayAlone() {
        return asked.isAfter(until);
    }

    /** What a piece waits for, if it does. */
    public Optional<Waiting> waitingOf(String piece) {
        return waiting.stream().filter(each -> each.pieces().contains(piece)).findFirst();
    }

    /** Whether a piece is looked at for itself: it comes first, has no day, or must be cut in time; and waits for no rope. */
    public boolean holds(Piece piece, ShopCalendar calendar) {
        if (waitingOf(piece.id()).isPresent()) {
            return false;
        }
        LocalDate cutBy = new WorkingDays(calendar).cutBy(piece);
        boolean first = piece.source().priority() == 1 && !isTodayAlone();
        return first || cutBy.equals(LocalDate.MAX) || !cutBy.isAfter(until);
    }

    /**
     * The question without what may wait. Matched sets stay whole where any piece of theirs may not wait, or is cut already;
     * what is pinned stays.
     *
     * @param atTheBench ids of further pieces that stay, since sheets at the bench have them
     */
    public static PackingProblem near(PackingProblem all, LocalDate until, Set<String> atTheBench) {
        Horizon horizon = new Horizon(until, 0);
        List<Piece> some = whole(all, atTheBench, piece -> horizon.holds(piece, all.calendar()));
        return all.about(some).looking(new Horizon(until, all.pieces().size() - some.size()));
    }

    /** Of a question that looks ahead what must be cut on its day alone, or has no day; sets and pins as ever. */
    public static PackingProblem today(PackingProblem near, Set<String> atTheBench) {
        CutDays days = new CutDays(near);
        List<Piece> some = whole(near, atTheBench, piece -> days.lastFor(piece).equals(near.day()));
        Horizon far = near.horizon();
        int later = far.later() + near.pieces().size() - some.size();
        LocalDate asked = far.until().isBefore(near.day()) ? near.day() : far.until();
        return near.about(some).looking(new Horizon(near.day(), later, asked, far.waiting()));
    }

    /** The pieces asked for, what is begun, pinned or at the bench, and the rest of the sets of all these. */
    static List<Piece> whole(PackingProblem all, Set<String> atTheBench, Predicate<Piece> asked) {
        Set<String> pinned = new HashSet<>(atTheBench);
        all.pins().forEach(pin -> pinned.add(pin.piece()));
        Set<String> sets = new HashSet<>();
        Set<String> some = new HashSet<>();
        for (Piece piece : all.pieces()) {
            boolean begun = !piece.matching().begun().isEmpty();
            if (begun || pinned.contains(piece.id()) || asked.test(piece)) {
                some.add(piece.id());
                if (piece.isMatched()) {
                    sets.add(piece.matching().set());
                }
            }
        }
        return all.pieces().stream()
                .filter(piece -> some.contains(piece.id())
                        || (piece.isMatched() && sets.contains(piece.matching().set())))
                .toList();
    }
}
