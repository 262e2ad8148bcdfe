package bitterend.day;

import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How far a piece has come.
 *
 * @param piece id of the piece
 * @param line its order line, such as {@code G-2101/2}
 * @param state how far
 * @param cutBy the last day on which it may be cut; {@link LocalDate#MAX} where its order has no day
 * @param place where and when the plan in force cuts it
 * @param cuts the reel it was cut off, as it was then; empty while it is not cut
 * @param found what it measures finished, and what was found when it was looked over
 */
public record PieceStatus(
        String piece, String line, State state, LocalDate cutBy, CutPlace place, List<Reel> cuts, LookedOver found) {
    public PieceStatus {
        cuts = List.copyOf(cuts);
    }

    /** How far a piece has come, in the order in which it goes. */
    public enum State {
        /** In no plan. */
        OPEN,
        /** In the plan in force, not cut. */
        PLANNED,
        /** Cut, and not what is ordered now: too short, or of another rope. */
        SHORT,
        CUT,
        SPLICED,
        /** Looked over and found good. */
        PASSED,
        DELIVERED;

        /** The word on pages. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** The reel it was cut off. */
    public Optional<Reel> reel() {
        return cuts.stream().findFirst();
    }

    /** The number of the plan that cuts it; empty unless it is planned. */
    public String plan() {
        return place.plan();
    }

    /** Whether it is still to be cut. */
    public boolean isToBeCut() {
        return state == State.OPEN || state == State.PLANNED;
    }

    /** Whether it is cut before it must be, as it shares a reel with what must. */
    public boolean isAhead() {
        return place.isPlanned() && place.on().isBefore(cutBy) && !cutBy.equals(LocalDate.MAX);
    }

    /** Whether it is cut after the last day on which it may be, or that day is gone on this one and it is not cut. */
    public boolean isLate(LocalDate today) {
        return isToBeCut() && cutBy.isBefore(place.isPlanned() && place.on().isAfter(today) ? place.on() : today);
    }

    public boolean is(State other) {
        return state == other;
    }
}
