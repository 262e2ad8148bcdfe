package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The whole-number bound of a node, at every stage of its linear program. */
final class NodeBoundTest {
    private static final int SHOPS = Math.max(40, Integer.getInteger("shops", 200) / 4);
    private static final long SEED = Long.getLong("shops.seed", 20260340);

    @Test
    void bound_isAtMostTheBestPlanOfTheNode_solvedOrNot() {
        int compared = 0;
        int tight = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            Random random = new Random(SEED + shop);
            Instance instance = new Normaliser(TreeShops.all(random, 5, 8)).instance();
            List<Pattern> patterns = random.nextBoolean() ? AllPatterns.of(instance) : AllPatterns.fullest(instance);
            List<Long> cheapest = AllPlans.cheapest(instance, patterns, 2_000_000);
            if (cheapest.isEmpty()) {
                continue;
            }
            PatternProgram program = new PatternProgram(instance);
            PatternNode node = program.root(patterns, new int[instance.types.length], supplies(instance));
            for (int stage = 0; stage < 8; stage++) {
                OptionalLong bound = new NodeBound(instance, node.lp, program.unit, program.scale).of(node.columns());
                assertTrue(
                        bound.isEmpty() || bound.getAsLong() <= cheapest.get(0),
                        "seed " + (SEED + shop) + " stage " + stage + ": " + bound + " above " + cheapest);
                compared++;
                tight += bound.isPresent() && instance.roundUp(bound.getAsLong()) == cheapest.get(0) ? 1 : 0;
                if (stage < 6) {
                    node.lp.dual(Double.MAX_VALUE, Budget.endless(), 1);
                } else {
                    node.lp.primal(Budget.endless());
                }
            }
        }
        assertTrue(compared > 4 * SHOPS, "compared " + compared);
        assertTrue(tight > SHOPS / 8, "hardly any bound was tight: " + tight);
    }

    static int[] supplies(Instance instance) {
        int[] most = new int[instance.types.length];
        for (ReelType type : instance.types) {
            most[type.index] = type.supply;
        }
        return most;
    }
}
