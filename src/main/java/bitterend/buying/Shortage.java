package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import java.time.LocalDate;
import java.util.List;

/**
 * Where a rope is short over the days ahead. What is short is what a plan of these days leaves undone, for pieces must fit the
 * runs that are there; the sums of lengths beside it only say how near it is.
 *
 * @param rope id of the rope
 * @param all the rope there may be for them on the last of these days, before anything is cut
 * @param days each day on which a piece ordered in it must be cut at the latest, in order
 */
public record Shortage(String rope, Room all, List<Day> days) {
    public Shortage {
        days = List.copyOf(days);
        if (days.isEmpty()) {
            throw new IllegalArgumentException("nothing is wanted in " + rope);
        }
    }

    /**
     * One day.
     *
     * @param day the last day on which the pieces may be cut
     * @param wanted what they take, cut losses included
     * @param room the rope there may be for them by then: what the plan cuts by the days before is no longer in it
     * @param undone what cannot be planned
     * @param shortUpTo what the undone pieces of this day and all days before it take
     * @param help reels that would do, if what keeps the work off them were settled
     */
    public record Day(
            LocalDate day, Length wanted, Room room, List<Undone> undone, Length shortUpTo, List<Sentence> help) {
        public Day {
            undone = List.copyOf(undone);
            help = List.copyOf(help);
        }
    }

    /**
     * Rope there may be by a day.
     *
     * @param there sound rope in the house that any order may have, and what is held for work of these days
     * @param held other rope in the house that is held or kept for some order or customer
     * @param onOrder rope on order that is counted on by the day
     */
    public record Room(Length there, Length held, Length onOrder) {}

    /**
     * A piece that cannot be planned.
     *
     * @param piece the piece
     * @param customer who waits for it; empty when not stated
     */
    public record Undone(Piece piece, String customer) {}

    /** Whether any work in it is left undone. */
    public boolean isShort() {
        return total().isPositive();
    }

    /** What all undone pieces take. */
    public Length total() {
        return days.get(days.size() - 1).shortUpTo();
    }
}
