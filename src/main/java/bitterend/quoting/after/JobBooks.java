package bitterend.quoting.after;

import bitterend.measure.Cost;
import bitterend.measure.Money;
import bitterend.measure.UnitPrice;
import bitterend.stock.Movement;
import bitterend.stock.Paid;
import bitterend.stock.StockValue;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the ledger and the shop say that a job is settled by.
 *
 * @param standing every movement that still stands, oldest first
 * @param good pieces that are cut and good
 * @param minutes booked for each piece, spoiled and spliced again included
 * @param rates what things cost
 */
public record JobBooks(List<Movement> standing, Set<String> good, Map<String, Long> minutes, Rates rates) {
    public JobBooks {
        standing = List.copyOf(standing);
        good = Set.copyOf(good);
        minutes = Map.copyOf(minutes);
    }

    /**
     * What things cost.
     *
     * @param ropes by rope
     * @param reels those of which it is known what was paid, by reel
     * @param opening opening a full reel
     * @param fetching fetching a reel and putting it back
     * @param labour rate of an hour
     */
    public record Rates(
            Map<String, OfRope> ropes, Map<String, Paid.OfReel> reels, Cost opening, Cost fetching, Money labour) {
        public Rates {
            ropes = Map.copyOf(ropes);
            reels = Map.copyOf(reels);
        }
    }

    /**
     * A rope.
     *
     * @param list its price in the catalogue
     * @param usual what it is counted at where nobody knows what a reel was paid for
     * @param value what a coil of it is worth
     */
    public record OfRope(UnitPrice list, RopePrice usual, StockValue value) {}
}
