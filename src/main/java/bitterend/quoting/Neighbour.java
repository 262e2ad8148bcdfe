package bitterend.quoting;

import bitterend.measure.Cost;
import bitterend.measure.Written;
import java.math.BigInteger;

/**
 * A small change to a line, within what the customer would take, that wastes less rope. All lines of the rope are cut
 * together from new reels.
 *
 * @param line the line
 * @param asked as it was asked for
 * @param better the change that wastes least
 */
public record Neighbour(String line, Variant asked, Variant better) {
    /**
     * One way of making the line. Less waste for the rope in the pieces comes first.
     *
     * @param finished finished length
     * @param quantity how many
     * @param waste what cutting costs beyond the rope in all pieces of that rope
     * @param worth the rope in those pieces
     */
    public record Variant(Written finished, int quantity, Cost waste, Cost worth) implements Comparable<Variant> {
        @Override
        public int compareTo(Variant other) {
            return wasteTimesWorthOf(other).compareTo(other.wasteTimesWorthOf(this));
        }

        BigInteger wasteTimesWorthOf(Variant other) {
            return BigInteger.valueOf(waste.millis())
                    .multiply(BigInteger.valueOf(other.worth().millis()));
        }
    }

    /** Whether the change is one of length, not of quantity. */
    public boolean changesLength() {
        return !asked.finished().equals(better.finished());
    }
}
