package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import java.util.List;
import java.util.Set;

/** Packs the orders in hand within limits on what may be bought, and reads the purchase off the packing. */
final class PurchasePacker {
    private final Orders orders;
    private final List<Piece> pieces;
    private final Set<String> late;
    private final Packer packer;

    PurchasePacker(Orders orders, List<Piece> pieces, Set<String> late, Packer packer) {
        this.orders = orders;
        this.pieces = pieces;
        this.late = Set.copyOf(late);
        this.packer = packer;
    }

    /**
     * A purchase that was found.
     *
     * @param purchase in true figures
     * @param byTier how many reels at each price
     * @param bound proven: what the aim weighs comes to no less
     */
    record Found(Purchase purchase, ReelSet byTier, Cost bound) {}

    /** The purchase behind the best packing found that is after an aim. */
    Found found(Aim aim, List<Tier> tiers, Limits limits, Effort effort) {
        PurchaseProblem weighed = new PurchaseProblem(orders, tiers, late, aim);
        Packer.Result result = packer.pack(weighed.problem(pieces, limits), effort);
        Cost sunk = limits.committed().counts().entrySet().stream()
                .map(entry -> sunk(weighed, tier(tiers, entry.getKey())).times(entry.getValue()))
                .reduce(Cost.ZERO, Cost::plus);
        Cost bound = result.bounds().stream().map(Bound::best).reduce(sunk, Cost::plus);
        PurchasedReels bought = bought(tiers, limits, result.packing());
        return new Found(bought.purchase(), bought.byTier(), bound);
    }

    /** Which pieces the rack, the rope on order and these reels could hold, each piece alone. */
    Holding holding(List<Tier> tiers, Limits limits) {
        return new Holding(new PurchaseProblem(orders, tiers, late, Aim.LEAST_COST).problem(pieces, limits));
    }

    /** What a reel bought whatever happens loses on the way to the rack: the price paid above its value there. */
    private static Cost sunk(PurchaseProblem weighed, Tier tier) {
        return tier.each().minus(weighed.value(tier, true).of(tier.offer().usable()));
    }

    private static Tier tier(List<Tier> tiers, String id) {
        return tiers.stream().filter(tier -> tier.id().equals(id)).findFirst().orElseThrow();
    }

    /** A packing in true figures, whatever it was after: the reels are called alike whatever is weighed. */
    private PurchasedReels bought(List<Tier> tiers, Limits limits, Packing packing) {
        PurchaseProblem plain = new PurchaseProblem(orders, tiers, late, Aim.LEAST_COST);
        PackingProblem problem = plain.problem(pieces, limits);
        return new PurchasedReels(orders, plain, problem, packing, tiers, limits.committed());
    }
}
