package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.TreeMap;

/** Adds a plan up from the problem as stated; shares nothing with the engine. */
final class PlanReferee {
    private PlanReferee() {}

    /** The plan keeps every rule, costs what it says, and its bounds do not exceed it. */
    static void check(PatternProblem problem, PatternPlan plan) {
        int[] cut = new int[problem.items().size()];
        int[] used = new int[problem.reels().size()];
        long cost = 0;
        for (Draw draw : plan.draws()) {
            used[draw.type()] += draw.reels();
            cost += draw.reels() * cost(problem.reels().get(draw.type()), draw);
            for (Take take : draw.takes()) {
                cut[take.item()] += draw.reels() * take.count();
            }
        }
        for (int k = 0; k < used.length; k++) {
            assertTrue(used[k] <= problem.reels().get(k).supply(), "more reels than there are of kind " + k);
        }
        long weight = 0;
        long all = 1;
        for (Item item : problem.items()) {
            all += item.demand() * item.weight();
        }
        for (int i = 0; i < cut.length; i++) {
            Item item = problem.items().get(i);
            assertEquals(item.demand(), cut[i] + plan.unplanned().get(i), "pieces of item " + i);
            assertTrue(plan.unplanned().get(i) >= 0);
            weight += plan.unplanned().get(i) * (item.weight() == 0 ? all : item.weight());
        }
        assertEquals(cost, plan.cost());
        assertEquals(weight, plan.unplannedWeight());
        assertTrue(plan.bound() <= plan.cost(), "bound " + plan.bound() + " above cost " + plan.cost());
        assertTrue(plan.weightBound() <= plan.unplannedWeight());
        assertTrue(plan.root().bound() <= plan.cost());
    }

    private static long cost(ReelKind type, Draw draw) {
        TreeMap<Integer, long[]> runs = new TreeMap<>();
        for (Take take : draw.takes()) {
            long length = type.lengths().get(take.item());
            assertTrue(length > 0, "item " + take.item() + " is not allowed on kind " + draw.type());
            long[] sums = runs.computeIfAbsent(take.run(), unseen -> new long[2]);
            sums[0] += length * take.count();
            sums[1] += take.count();
        }
        long cost = type.opening();
        for (int r = 0; r <= runs.lastKey(); r++) {
            Run run = type.runs().get(r);
            long[] sums = runs.get(r);
            if (sums == null) {
                cost += run.handling();
                continue;
            }
            assertTrue(sums[0] + (sums[1] - 1) * type.cutLoss() <= run.length(), "run " + r + " is overfull");
            long left = Math.max(0, run.length() - sums[0] - sums[1] * type.cutLoss());
            cost += type.value().applyAsLong(run.length()) - type.value().applyAsLong(left);
        }
        return cost;
    }
}
