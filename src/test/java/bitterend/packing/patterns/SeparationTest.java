package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Cuts hold for every plan and cut off the solution they were made for. */
final class SeparationTest {
    private static final int SHOPS = Math.max(40, Integer.getInteger("shops", 200) / 4);
    private static final long SEED = Long.getLong("shops.seed", 20260305);

    @Test
    void subsetRows_holdForEveryPlan() {
        assertTrue(checked((instance, node, x) -> new SubsetRows(instance, node.columns(), x).violated()) > SHOPS / 40);
    }

    @Test
    void roundedRows_holdForEveryPlan() {
        assertTrue(checked((instance, node, x) ->
                        new ChvatalGomoryCuts(node.lp, node.columns(), x).violated(Budget.endless()))
                > SHOPS / 20);
    }

    @Test
    void cutNode_isBoundedByWhatItsBestPlanCosts() {
        int raised = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            Instance instance = new Normaliser(TreeShops.all(new Random(SEED + shop), 5, 8)).instance();
            List<Pattern> patterns = AllPatterns.of(instance);
            List<Long> cheapest = AllPlans.cheapest(instance, patterns, 1_000_000);
            if (cheapest.isEmpty()) {
                continue;
            }
            PatternNode node = PatternNodeTest.root(instance, patterns);
            node.raise();
            long before = node.bound();
            new Separation(instance, Budget.endless()).cut(node, cheapest.get(0));
            node.raise();
            assertTrue(
                    node.bound() <= cheapest.get(0),
                    "seed " + (SEED + shop) + ": " + node.bound() + " above " + cheapest);
            raised += node.bound() > before ? 1 : 0;
        }
        assertTrue(raised > SHOPS / 40, "hardly any cut raised a bound: " + raised);
    }

    @FunctionalInterface
    private interface Source {
        List<ValidInequality> cuts(Instance instance, PatternNode node, double[] x);
    }

    private static int checked(Source source) {
        int cuts = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            Instance instance = new Normaliser(TreeShops.all(new Random(SEED + shop), 5, 8)).instance();
            List<Pattern> patterns = AllPatterns.of(instance);
            if (patterns.isEmpty()) {
                continue;
            }
            PatternNode node = PatternNodeTest.root(instance, patterns);
            double[] x = node.lp.values();
            List<ValidInequality> found = source.cuts(instance, node, x);
            List<Pattern> columns = new ArrayList<>(node.columns());
            int own = columns.size() - patterns.size();
            String where = "seed " + (SEED + shop);
            for (ValidInequality cut : found) {
                double now = 0;
                for (int t = 0; t < cut.columns().length; t++) {
                    assertEquals(Math.rint(cut.coefficients()[t]), cut.coefficients()[t]);
                    now += cut.coefficients()[t] * x[cut.columns()[t]];
                }
                assertTrue(now < cut.rhs() - 0.01, where + ": the cut is kept already");
                AllPlans.tell(
                        instance,
                        patterns,
                        300_000,
                        times -> assertTrue(value(cut, times, own) >= cut.rhs() - 1e-9, where + ": a plan is cut off"));
                cuts++;
            }
        }
        return cuts;
    }

    /** What a plan comes to in a cut; the program's own columns stand before the patterns. */
    private static double value(ValidInequality cut, int[] times, int own) {
        double sum = 0;
        for (int t = 0; t < cut.columns().length; t++) {
            int pattern = cut.columns()[t] - own;
            sum += pattern < 0 ? 0 : cut.coefficients()[t] * times[pattern];
        }
        return sum;
    }
}
