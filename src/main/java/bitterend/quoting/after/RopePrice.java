package bitterend.quoting.after;

import bitterend.measure.UnitPrice;
import org.jspecify.annotations.Nullable;

/**
 * What rope of a reel is counted at.
 *
 * @param price by the metre
 * @param source where that is known from
 * @param freight by the metre; null where nobody booked what bringing the reel cost
 */
public record RopePrice(UnitPrice price, Source source, @Nullable UnitPrice freight) {
    /** Of which no freight is booked. */
    public RopePrice(UnitPrice price, Source source) {
        this(price, source, null);
    }

    /** Where a price is known from, the best first. */
    public enum Source {
        PAID("what its reel was paid for"),
        OFFER("the cheapest offer whose minimum the job reaches"),
        OUT_OF_REACH("the cheapest offer, though the job takes fewer reels than it asks for"),
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
