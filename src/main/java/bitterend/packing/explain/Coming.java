package bitterend.packing.explain;

import bitterend.measure.Length;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.Words;
import java.time.LocalDate;

/**
 * A reel that is on order. Its lot is not known before it comes.
 *
 * @param id the shop's number for the order of reels
 * @param rope id of the rope on it
 * @param length usable length
 * @param expected the day it is on the rack
 * @param certificate kind of certificate that comes with it; empty when none
 */
public record Coming(String id, String rope, Length length, LocalDate expected, String certificate) {
    /** That it would do, once it is here. */
    Reason offeredFor(String work) {
        return new Reason(
                Rule.PLANNED,
                "order " + id + " would do for " + work + ": " + Words.of(length) + " of " + rope + ", expected "
                        + expected);
    }
}
