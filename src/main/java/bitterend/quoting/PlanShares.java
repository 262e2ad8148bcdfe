package bitterend.quoting;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Coins;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.packing.Bound;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.fraction.BigFraction;

/**
 * What each order of a day caused: the cost of the reels drawn, shared by the dual prices behind the proof, or by cut length
 * where nothing is proven. A share of today's rack makes no promise: another order's share may change with the reels that
 * happen to stand there.
 */
public final class PlanShares {
    private final PackingProblem problem;
    private final Map<String, Piece> pieces = new HashMap<>();

    private PlanShares(PackingProblem problem) {
        this.problem = problem;
        problem.pieces().forEach(piece -> pieces.put(piece.id(), piece));
    }

    /**
     * What one order caused on the ropes that were packed together.
     *
     * @param ropes the ropes
     * @param order the order
     * @param pieces how many of its pieces are planned
     * @param cut their cut lengths together
     * @param worth the rope in them at its price; nothing for a customer's own
     * @param share of the cost of the reels drawn
     * @param proven whether dual prices stand behind the share, not lengths alone
     */
    public record OrderShare(
            List<String> ropes, String order, int pieces, Length cut, Money worth, Money share, boolean proven) {
        public OrderShare {
            ropes = List.copyOf(ropes);
        }
    }

    /** The share of every order with a planned piece, by rope and order; of each group of ropes they add up. */
    public static List<OrderShare> of(PackingProblem problem, CutPlan plan) {
        PlanShares shares = new PlanShares(problem);
        Map<String, Bound> bounds = new HashMap<>();
        plan.bounds().forEach(bound -> bound.ropes().forEach(rope -> bounds.put(rope, bound)));
        Map<List<String>, List<ReelDraw>> groups = new HashMap<>();
        for (ReelDraw draw : plan.draws()) {
            String rope = problem.reel(draw.reel()).rope();
            List<String> ropes = bounds.containsKey(rope) ? bounds.get(rope).ropes() : List.of(rope);
            groups.computeIfAbsent(ropes, key -> new ArrayList<>()).add(draw);
        }
        List<OrderShare> all = new ArrayList<>();
        groups.entrySet().stream()
                .sorted(Comparator.comparing(group -> group.getKey().get(0), NaturalOrder.IDS))
                .forEach(group -> {
                    Bound bound = bounds.get(group.getKey().get(0));
                    all.addAll(shares.group(group.getKey(), group.getValue(), bound == null ? Map.of() : duals(bound)));
                });
        return all;
    }

    private static Map<String, Long> duals(Bound bound) {
        Map<String, Long> duals = new HashMap<>();
        bound.duals().forEach(dual -> dual.pieces().forEach(piece -> duals.put(piece, Math.max(0, dual.price()))));
        return duals;
    }

    /** What an order adds up to while the draws are gone through. */
    private static final class Sum {
        private int count;
        private Length cut = Length.ZERO;
        private Cost worth = Cost.ZERO;
        private BigInteger price = BigInteger.ZERO;
    }

    private List<OrderShare> group(List<String> ropes, List<ReelDraw> draws, Map<String, Long> duals) {
        Map<String, Sum> sums = new TreeMap<>(NaturalOrder.IDS);
        Cost cost = Cost.ZERO;
        for (ReelDraw draw : draws) {
            cost = cost.plus(draw.cost());
            for (Cut cut : draw.cuts()) {
                add(sums, draw.reel(), cut, duals);
            }
        }
        BigInteger all = sums.values().stream().map(sum -> sum.price).reduce(BigInteger.ZERO, BigInteger::add);
        boolean proven = all.signum() > 0;
        List<BigFraction> exact = new ArrayList<>();
        BigInteger lengths = BigInteger.valueOf(
                sums.values().stream().mapToLong(sum -> sum.cut.mm()).sum());
        for (Sum sum : sums.values()) {
            BigInteger weight = proven ? sum.price : BigInteger.valueOf(sum.cut.mm());
            exact.add(new BigFraction(BigInteger.valueOf(cost.millis()).multiply(weight), proven ? all : lengths));
        }
        List<Money> coins = Coins.of(cost, exact);
        List<OrderShare> shares = new ArrayList<>();
        sums.forEach((order, sum) -> shares.add(new OrderShare(
                ropes, order, sum.count, sum.cut, sum.worth.rounded(), coins.get(shares.size()), proven)));
        return shares;
    }

    private void add(Map<String, Sum> sums, String reel, Cut cut, Map<String, Long> duals) {
        Piece piece = pieces.get(cut.piece());
        if (piece == null) {
            throw new IllegalArgumentException("no piece " + cut.piece());
        }
        boolean own = problem.reel(reel).custody().isCustomersOwn();
        Sum sum = sums.computeIfAbsent(piece.order(), order -> new Sum());
        sum.count++;
        sum.cut = sum.cut.plus(cut.length());
        sum.worth = own
                ? sum.worth
                : sum.worth.plus(problem.ropeOn(problem.reel(reel)).price().of(cut.length()));
        sum.price = sum.price.add(BigInteger.valueOf(duals.getOrDefault(piece.id(), 0L)));
    }
}
