package bitterend.packing.greedy;

import bitterend.measure.Length;
import bitterend.packing.RunId;
import bitterend.stock.Reel;
import java.util.Comparator;

/**
 * A run with room for pieces.
 *
 * @param reel the reel it is on
 * @param run its index from zero
 * @param length sound rope in it
 */
record Slot(Reel reel, int run, Length length) {
    static final Comparator<Slot> BY_ID = Comparator.comparing(Slot::id);

    RunId id() {
        return new RunId(reel.id(), run + 1);
    }
}
