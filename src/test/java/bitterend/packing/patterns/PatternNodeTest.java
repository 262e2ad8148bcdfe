package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
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
            Instance instance = new Normaliser(TreeShops.all(random, 5, 8)).instance();
            List<Pattern> patterns = AllPatterns.of(instance);
            List<Long> cheapest = AllPlans.cheapest(instance, patterns, 1_000_000);
            if (cheapest.isEmpty()) {
                continue;
            }
            PatternNode node = root(instance, patterns);
            long target = cheapest.get(0) + random.nextInt(3) * instance.step;
            node.drop(target);
            List<Pattern> left = node.columns();
            AllPlans.tell(instance, patterns, 1_000_000, times -> {
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
            Instance instance = new Normaliser(TreeShops.all(random, 5, 8)).instance();
            List<Pattern> patterns = AllPatterns.of(instance);
            List<Long> cheapest = AllPlans.cheapest(instance, patterns, 1_000_000);
            if (cheapest.isEmpty()) {
                continue;
            }
            PatternNode node = root(instance, patterns);
            double[] x = node.lp.values();
            for (Branch branch : new Branching(instance, instance.counted(), node.columns(), x).candidates(4)) {
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
        Instance instance = new Normaliser(TreeShops.all(new Random(SEED), 8, 8)).instance();
        List<Pattern> patterns = AllPatterns.of(instance);
        PatternNode node = root(instance, patterns);
        List<Pattern> real = new ArrayList<>(node.columns());
        real.removeIf(Pattern::empty);
        assertEquals(patterns, real);
        assertEquals(node.lp.columns(), node.columns().size());
    }

    static PatternNode root(Instance instance, List<Pattern> patterns) {
        PatternNode node = new PatternProgram(instance)
                .root(patterns, new int[instance.types.length], NodeBoundTest.supplies(instance));
        node.lp.primal(Budget.endless());
        return node;
    }
}
