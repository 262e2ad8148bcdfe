package bitterend.buying;

import bitterend.measure.Length;
import bitterend.measure.Written;
import java.time.LocalDate;

/**
 * Reels that are ordered and paid for, but not on the rack yet.
 *
 * @param id the shop's number for the order of reels
 * @param rope id of the rope on them
 * @param written usable length of each as it was typed; positive
 * @param quantity how many; at least 1
 * @param expected the day they are on the rack
 * @param certificate kind of certificate that comes with them; empty when none
 */
public record OnOrder(String id, String rope, Written written, int quantity, LocalDate expected, String certificate) {
    public OnOrder {
        Length length = written.roundedDown();
        if (!length.isPositive() || quantity < 1) {
            throw new IllegalArgumentException("length " + length + ", quantity " + quantity);
        }
    }

    /** Usable length of each in whole millimetres, rounded down. */
    public Length length() {
        return written.roundedDown();
    }

    String marking() {
        return rope + ": on order " + id;
    }
}
