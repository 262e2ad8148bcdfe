package bitterend.market;

import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.Written;
import bitterend.packing.Arrival;
import bitterend.stock.Promised;
import bitterend.stock.Reel;
import java.time.LocalDate;

/**
 * Reels that are ordered and paid for, but not on the rack yet.
 *
 * @param id the shop's number for the order of reels
 * @param supplier who sends them; empty when not stated
 * @param rope id of the rope on them
 * @param made what is on each, as it was ordered
 * @param quantity how many are still to come; at least 1
 * @param came how many of the order came already
 * @param expected the day they are on the rack
 * @param price of each, without freight
 */
public record OnOrder(
        String id,
        String supplier,
        String rope,
        Offer.Made made,
        int quantity,
        int came,
        LocalDate expected,
        Money price) {
    public OnOrder {
        if (quantity < 1 || came < 0) {
            throw new IllegalArgumentException("quantity " + quantity + ", came " + came);
        }
    }

    /** Length of each as it was typed. */
    public Written written() {
        return made.written();
    }

    /** Length of each that can be counted on, rounded down. */
    public Length usable() {
        return made.usable();
    }

    /** The same, expected on another day. */
    public OnOrder expectedOn(LocalDate day) {
        return new OnOrder(id, supplier, rope, made, quantity, came, day, price);
    }

    /**
     * One of the reels as it will be on the rack: full, of an unknown lot, as much of it uncertain as the supplier may send
     * short.
     *
     * @param n which of those that are still to come, from 1
     */
    public Reel reel(int n) {
        return new Reel(
                Arrival.idOf(id, came + n),
                rope,
                "",
                new Reel.Contents(written(), made.length().minus(usable()), Length.ZERO, Length.ZERO, made.known()),
                java.util.List.of(),
                new Reel.Papers(made.certificate(), "", LocalDate.MAX, LocalDate.MIN),
                Reel.Custody.FREE,
                true,
                Reel.Where.UNKNOWN);
    }

    /** What its supplier said of each. */
    public Promised promised() {
        return new Promised(id, supplier, written(), made.tolerance(), expected, price);
    }

    public String marking() {
        return rope + ": on order " + id;
    }
}
