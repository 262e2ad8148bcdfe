package bitterend.buying;

import bitterend.measure.Length;
import java.time.LocalDate;

/**
 * Reels that are ordered and paid for, but not on the rack yet.
 *
 * @param id the shop's number for the order of reels
 * @param rope id of the rope on them
 * @param length usable length of each; positive
 * @param quantity how many; at least 1
 * @param expected the day they are on the rack
 * @param certificate kind of certificate that comes with them; empty when none
 */
public record OnOrder(String id, String rope, Length length, int quantity, LocalDate expected, String certificate) {
    public OnOrder {
        if (!length.isPositive() || quantity < 1) {
            throw new IllegalArgumentException("length " + length + ", quantity " + quantity);
        }
    }

    String marking() {
        return rope + ": on order " + id;
    }
}
