package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.linear.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Fixing by reduced cost, and the two sides of a branch. */
final class PatternNodeTest {
    private static final int SHOPS = Math.max(40, Integer.getInteger("shops", 200) / 4);
    private static final long SEED = Long.getLong("shops.seed", 20260303);

    @Test
    void drop_keepsEveryPatternOfEveryPlanWithinTheTarget() {
        int dropped = 0;
        int used = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            Random random = new Random(SEED + shop);
            Task task = new Normaliser(TreeShops.all(random, 5, 8)).task();
            List<Pattern> patterns = AllPatterns.of(task);
            List<Long> cheapest = AllPlans.cheapest(task, patterns, 1_000_000);
            if (cheapest.isEmpty()) {
                continue;
            }
            PatternNode node = root(task, patterns);
            long target = cheapest.get(0) + random.nextInt(3) * task.step;
            node.drop(target);
            List<Pattern> left = node.columns();
            AllPlans.tell(task, patterns, 1_000_000, times -> {
                long cost = 0;
                for (int p = 0; p < times.length; p++) {
                    cost += times[p] * patterns.get(p).cost;
                }
                for (int p = 0; p < times.length && cost <= target; p++) {
                    assertTrue(
                            times[p] == 0 || left.contains(patterns.get(p)),
                            "a pattern of a plan of " + cost + " is gone, target " + target);
                }
            });
            dropped += patterns.size()
                    - (int) left.stream().filter(p -> !p.empty()).count();
            used++;
        }
        assertTrue(used > SHOPS / 2, "used " + used);
        assertTrue(dropped > SHOPS, "hardly anything was dropped: " + dropped);
    }

    @Test
    void sides_leaveNoPlanOut() {
        int branches = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            Random random = new Random(SEED + shop);
            Task task = new Normaliser(TreeShops.all(random, 5, 8)).task();
            List<Pattern> patterns = AllPatterns.of(task);
            List<Long> cheapest = AllPlans.cheapest(task, patterns, 1_000_000);
            if (cheapest.isEmpty()) {
                continue;
            }
            PatternNode node = root(task, patterns);
            double[] x = node.lp.values();
            for (Branch branch : new Branching(task, task.counted(), node.columns(), x).candidates(4)) {
                long best = Long.MAX_VALUE;
                for (boolean more : new boolean[] {true, false}) {
                    PatternNode side = node.side(branch, more);
                    side.lp.primal(Budget.endless());
                    side.raise();
                    best = Math.min(best, side.bound());
                }
                assertTrue(best <= cheapest.get(0), "seed " + (SEED + shop) + ": " + best + " above " + cheapest);
                branches++;
            }
        }
        assertTrue(branches > SHOPS / 8, "hardly any node was branched: " + branches);
    }

    @Test
    void columns_standBesideTheirVariables() {
        Task task = new Normaliser(TreeShops.all(new Random(SEED), 8, 8)).task();
        List<Pattern> patterns = AllPatterns.of(task);
        PatternNode node = root(task, patterns);
        List<Pattern> real = new ArrayList<>(node.columns());
        real.removeIf(Pattern::empty);
        assertEquals(patterns, real);
        assertEquals(node.lp.columns(), node.columns().size());
    }

    static PatternNode root(Task task, List<Pattern> patterns) {
        PatternNode node =
                new PatternProgram(task).root(patterns, new int[task.kinds.length], NodeBoundTest.supplies(task));
        node.lp.primal(Budget.endless());
        return node;
    }
}
