package bitterend.quoting;

import bitterend.measure.Cost;

/** The waste of a job seen in one way: what cutting it costs beyond the rope in its pieces. May be negative. */
public sealed interface WasteView {
    /**
     * It lies between two amounts.
     *
     * @param low least
     * @param middle found, or the mean
     * @param high most
     * @param samples how often it was looked at
     */
    record Span(Cost low, Cost middle, Cost high, int samples) implements WasteView {
        public boolean isExact() {
            return low.equals(high);
        }
    }

    /**
     * It cannot be told.
     *
     * @param reason in a sentence without a full stop
     */
    record NotKnown(String reason) implements WasteView {}
}
