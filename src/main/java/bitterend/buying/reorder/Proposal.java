package bitterend.buying.reorder;

import bitterend.market.Bill;
import bitterend.market.LeftOut;
import bitterend.measure.Length;
import java.time.LocalDate;
import java.util.List;

/**
 * What to order now.
 *
 * @param day the day it is asked
 * @param lines what to order, by supplier and rope
 * @param bill what that comes to, an order to each supplier, and what still forbids it
 * @param later what is not to be ordered yet, the first to come first
 * @param unpaid what is due and goes beyond the budget
 * @param booked ropes that nobody offers, of which more is booked than there is and comes
 * @param unoffered the other ropes with a past that nobody offers
 * @param leftOut offers of all these ropes that nobody can order, each with its reason
 * @param terms what the shop asks
 */
public record Proposal(
        LocalDate day,
        List<Line> lines,
        Bill bill,
        List<Line> later,
        List<Line> unpaid,
        List<Booked> booked,
        List<String> unoffered,
        List<LeftOut> leftOut,
        Terms terms) {
    public Proposal {
        lines = List.copyOf(lines);
        later = List.copyOf(later);
        unpaid = List.copyOf(unpaid);
        booked = List.copyOf(booked);
        unoffered = List.copyOf(unoffered);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * A rope that nobody offers.
     *
     * @param rope its id
     * @param position what there is of it, and what is booked
     */
    public record Booked(String rope, Position position) {
        /** How much more is booked than there is and comes. */
        public Length beyond() {
            return position.beyond();
        }
    }

    /** Whether nothing is to be ordered. */
    public boolean isEmpty() {
        return lines.isEmpty();
    }
}
