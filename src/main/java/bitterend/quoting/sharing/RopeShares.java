package bitterend.quoting.sharing;

import bitterend.measure.Coins;
import bitterend.measure.Cost;
import bitterend.measure.Money;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.fraction.BigFraction;

/**
 * The cost of cutting one rope for several parties from new reels, shared out.
 *
 * @param problem what was cut from what
 * @param packing how it was cut
 * @param cost what that costs: the value of the rope drawn, opening and changing of reels
 * @param proven no way of cutting costs less
 * @param byDuals share of each party by dual prices, in 1/1000 minor unit, exact; they add up to the cost
 * @param factor no group pays more by dual prices than this times what it would pay alone; nothing when the pieces have no
 *     price at all, and the cost was shared by length
 * @param stability whether a split exists that no group would leave
 */
public record RopeShares(
        PackingProblem problem,
        Packing packing,
        Cost cost,
        Cost proven,
        List<BigFraction> byDuals,
        Optional<Factor> factor,
        Stability stability) {
    public RopeShares {
        byDuals = List.copyOf(byDuals);
    }

    /** The shares to charge: a stable split where one is known, else those by dual prices. */
    public List<BigFraction> fair() {
        return stability instanceof Stability.Stable stable ? stable.shares() : byDuals;
    }

    /** The shares to charge in whole coins, which add up to the rounded cost. */
    public List<Money> coins() {
        return Coins.of(cost, fair());
    }

    public boolean isProvenBest() {
        return cost.equals(proven);
    }
}
