package bitterend.quoting.after;

import bitterend.measure.Money;
import bitterend.stock.Movement;
import bitterend.stock.Paid;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the ledger and the shop say that a job is settled by.
 *
 * @param standing every movement that still stands, oldest first
 * @param good pieces that are cut and good
 * @param minutes booked for each piece, spoiled and spliced again included
 * @param rates what things cost now
 * @param then what held on the day of each cut
 */
public record JobBooks(
        List<Movement> standing, Set<String> good, Map<String, Long> minutes, Rates rates, ThatDay then) {
    public JobBooks {
        standing = List.copyOf(standing);
        good = Set.copyOf(good);
        minutes = Map.copyOf(minutes);
    }

    /**
     * What things cost.
     *
     * @param usual what rope is counted at where nobody knows what a reel was paid for, by rope
     * @param reels those of which it is known what was paid, by reel
     * @param labour rate of an hour
     */
    public record Rates(Map<String, RopePrice> usual, Map<String, Paid.OfReel> reels, Money labour) {
        public Rates {
            usual = Map.copyOf(usual);
            reels = Map.copyOf(reels);
        }
    }
}
