package bitterend.packing.explain;

import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.measure.Written;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import java.time.LocalDate;

/**
 * A reel that is on order. Its lot is not known before it comes.
 *
 * @param id the shop's number for the order of reels
 * @param rope id of the rope on it
 * @param written usable length as it was typed
 * @param expected the day it is on the rack
 * @param certificate kind of certificate that comes with it; empty when none
 */
public record Coming(String id, String rope, Written written, LocalDate expected, String certificate) {
    /** Usable length in whole millimetres, rounded down. */
    Length length() {
        return written.roundedDown();
    }

    /** That it would do, once it is here. */
    Reason offeredFor(String work) {
        return new Reason(
                Rule.PLANNED,
                Sentence.of("order " + id + " would do for " + work + ": ")
                        .and(written)
                        .and(" of " + rope + ", expected " + expected));
    }
}
