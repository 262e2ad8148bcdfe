package bitterend.quoting.sharing;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.fraction.BigFraction;

/**
 * Shares the cost of cutting a rope from new reels among those it is cut for: by dual prices, so that no group pays more
 * than a printed factor times its cost alone (Owen, Mathematical Programming 9, 1975), and by a stable split if there is
 * one.
 */
public final class Sharing {
    private final Packer packer;
    private final Effort effort;
    private final Effort perGroup;
    private final LocalDate day;

    /**
     * @param effort for the cost of all parties together
     * @param perGroup for the cost of one group alone
     */
    public Sharing(Packer packer, Effort effort, Effort perGroup, LocalDate day) {
        this.packer = packer;
        this.effort = effort;
        this.perGroup = perGroup;
        this.day = day;
    }

    /**
     * The shares of the parties in the cost of their pieces.
     *
     * @param parties at least one, each with at least one piece, none longer than the longest reel
     */
    public RopeShares share(NewRope rope, List<Party> parties) {
        List<Piece> pieces =
                parties.stream().flatMap(party -> party.pieces().stream()).toList();
        PackingProblem problem = rope.problem(pieces, day);
        Packer.Result result = packer.pack(problem, effort);
        GroupCosts costs = new GroupCosts(rope, parties, new GroupCosts.Fallback(packer, perGroup, day));
        Packing packing = costs.exactPacking(problem).orElse(result.packing());
        CostRange all = new CostRange(
                costs.exact().orElse(CostRange.of(result, pieces.size()).proven()),
                new PlanPrice(problem).of(packing).millis());
        costs.putWhole(all);
        Cost cost = new Cost(all.found());
        DualPrices duals = DualPrices.of(rope, problem.pieces(), result.bounds());
        BigInteger sum = duals.of(new Party("all", problem.pieces()));
        List<BigFraction> shares = new ArrayList<>();
        for (Party party : parties) {
            shares.add(sum.signum() == 0 ? byLength(cost, party, pieces) : byDuals(cost, duals.of(party), sum));
        }
        return new RopeShares(
                problem,
                packing,
                cost,
                new Cost(all.proven()),
                shares,
                factor(cost, duals, sum),
                new StableSplit(parties, costs, shares).find());
    }

    /** What it costs to cut pieces from new reels, without any sharing; no more is known of pieces longer than a reel. */
    public CostRange cost(NewRope rope, List<Piece> pieces) {
        if (pieces.isEmpty()) {
            return new CostRange(0, 0);
        }
        GroupCosts costs =
                new GroupCosts(rope, List.of(new Party("all", pieces)), new GroupCosts.Fallback(packer, perGroup, day));
        return costs.of(Group.alone(0));
    }

    private static BigFraction byDuals(Cost cost, BigInteger price, BigInteger sum) {
        return new BigFraction(BigInteger.valueOf(cost.millis()).multiply(price), sum);
    }

    private static BigFraction byLength(Cost cost, Party party, List<Piece> pieces) {
        long all = new Party("all", pieces).cut().mm();
        return new BigFraction(
                BigInteger.valueOf(cost.millis())
                        .multiply(BigInteger.valueOf(party.cut().mm())),
                BigInteger.valueOf(all));
    }

    private static Optional<Factor> factor(Cost cost, DualPrices duals, BigInteger sum) {
        if (sum.signum() == 0) {
            return cost.equals(Cost.ZERO) ? Optional.of(Factor.ONE) : Optional.empty();
        }
        BigInteger units = BigInteger.valueOf(cost.millis()).multiply(BigInteger.valueOf(duals.scale()));
        return Optional.of(new Factor(new BigFraction(units, sum)));
    }
}
