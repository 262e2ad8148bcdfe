package bitterend.quoting.sharing;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
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
     * Pieces cut from new reels as well as the whole effort allows.
     *
     * @param pieces at least one, none longer than the longest reel
     */
    public Cutting cut(NewRope rope, List<Piece> pieces) {
        PackingProblem problem = rope.problem(pieces, day);
        Packer.Result result = packer.pack(problem, effort);
        return findExact(problem, rope, pieces)
                .map(exact -> new Cutting(rope, problem, exact.packing(), exact.cost(), result.bounds()))
                .orElseGet(() -> cutting(rope, problem, result));
    }

    /** The same with the effort for one group. */
    public Cutting cutQuickly(NewRope rope, List<Piece> pieces) {
        PackingProblem problem = rope.problem(pieces, day);
        return findExact(problem, rope, pieces).orElseGet(() -> cutting(rope, problem, packer.pack(problem, perGroup)));
    }

    private static Cutting cutting(NewRope rope, PackingProblem problem, Packer.Result result) {
        CostRange cost = CostRange.of(result, problem.pieces().size());
        return new Cutting(rope, problem, result.packing(), cost, result.bounds());
    }

    /** By the exact table, where it reaches. */
    private Optional<Cutting> findExact(PackingProblem problem, NewRope rope, List<Piece> pieces) {
        GroupCosts costs = costs(rope, List.of(new Party("all", pieces)));
        return costs.exactPacking(problem).map(packing -> {
            long cost = new PlanPrice(problem).of(packing).millis();
            return new Cutting(
                    rope, problem, packing, new CostRange(costs.exact().orElse(cost), cost), List.of());
        });
    }

    /** The shares of the parties in the cost of their pieces, which are cut as well as the whole effort allows. */
    public RopeShares share(NewRope rope, List<Party> parties) {
        return share(
                cut(
                        rope,
                        parties.stream()
                                .flatMap(party -> party.pieces().stream())
                                .toList()),
                parties);
    }

    /**
     * The shares of the parties in the cost of their pieces.
     *
     * @param cutting of all their pieces, which are cut whole
     * @param parties at least one, each with at least one piece
     */
    public RopeShares share(Cutting cutting, List<Party> parties) {
        NewRope rope = cutting.rope();
        List<Piece> pieces =
                parties.stream().flatMap(party -> party.pieces().stream()).toList();
        PackingProblem problem = cutting.problem();
        GroupCosts costs = costs(rope, parties);
        CostRange all = cutting.cost();
        costs.putWhole(all);
        Cost cost = new Cost(all.found());
        DualPrices duals = DualPrices.of(rope, problem.pieces(), cutting.bounds());
        BigInteger sum = duals.of(new Party("all", problem.pieces()));
        List<BigFraction> shares = new ArrayList<>();
        for (Party party : parties) {
            shares.add(sum.signum() == 0 ? byLength(cost, party, pieces) : byDuals(cost, duals.of(party), sum));
        }
        return new RopeShares(
                problem,
                cutting.packing(),
                cost,
                new Cost(all.proven()),
                shares,
                factor(cost, duals, sum),
                new StableSplit(parties, costs, shares).find());
    }

    private GroupCosts costs(NewRope rope, List<Party> parties) {
        return new GroupCosts(rope, parties, new GroupCosts.Fallback(packer, perGroup, day));
    }

    /** What it costs to cut pieces from new reels, without any sharing; no more is known of pieces longer than a reel. */
    public CostRange cost(NewRope rope, List<Piece> pieces) {
        if (pieces.isEmpty()) {
            return new CostRange(0, 0);
        }
        return costs(rope, List.of(new Party("all", pieces))).of(Group.alone(0));
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
