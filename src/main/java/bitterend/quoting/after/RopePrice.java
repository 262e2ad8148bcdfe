package bitterend.quoting.after;

import bitterend.measure.UnitPrice;

/**
 * What rope of a reel is counted at.
 *
 * @param price by the metre
 * @param source where that is known from
 */
public record RopePrice(UnitPrice price, Source source) {
    /** Where a price is known from, the best first. */
    public enum Source {
        PAID("what its reel was paid for"),
        OFFER("the cheapest offer, freight by reel included"),
        LIST("the price of the rope in the catalogue");

        private final String words;

        Source(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
