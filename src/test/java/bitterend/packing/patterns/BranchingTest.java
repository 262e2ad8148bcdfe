package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What may be branched on: numbers that are whole in every plan and broken in the program. */
final class BranchingTest {
    private static final int SHOPS = Math.max(40, Integer.getInteger("shops", 200) / 4);
    private static final long SEED = Long.getLong("shops.seed", 20260304);

    @Test
    void candidates_areBrokenNow_andAnyBrokenSolutionHasOne() {
        int broken = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            Random random = new Random(SEED + shop);
            Instance instance = new Normaliser(TreeShops.all(random, 8, 11)).instance();
            List<Pattern> patterns = AllPatterns.of(instance);
            if (patterns.isEmpty()) {
                continue;
            }
            PatternNode node = PatternNodeTest.root(instance, patterns);
            double[] x = node.lp.values();
            List<Branch> candidates =
                    new Branching(instance, instance.counted(), node.columns(), x).candidates(1 + random.nextInt(8));
            for (Branch branch : candidates) {
                double sum =
                        Arrays.stream(branch.columns()).mapToDouble(j -> x[j]).sum();
                assertTrue(sum > branch.floor() + 1e-6 && sum < branch.floor() + 1 - 1e-6, "not broken: " + sum);
                assertTrue(
                        Arrays.stream(branch.columns())
                                .noneMatch(j -> node.columns().get(j).empty()),
                        "a row's own column is no reel");
            }
            boolean whole = true;
            for (int j = 0; j < x.length; j++) {
                whole &= node.columns().get(j).empty() || Math.abs(x[j] - Math.rint(x[j])) < 1e-5;
            }
            assertFalse(!whole && candidates.isEmpty(), "seed " + (SEED + shop) + ": nothing to branch on");
            broken += whole ? 0 : 1;
        }
        assertTrue(broken > SHOPS / 8, "hardly any solution was broken: " + broken);
    }
}
