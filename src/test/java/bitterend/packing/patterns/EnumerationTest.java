package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** All ways to draw from a reel that a plan within a target can use, from one run and from several. */
final class EnumerationTest {
    private static final int SHOPS = Math.max(40, Integer.getInteger("shops", 200) / 4);
    private static final long SEED = Long.getLong("shops.seed", 20260307);

    @Test
    void noPatternOfReducedCostWithinTheDistance_isMissing() {
        int kept = 0;
        int left = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            Random random = new Random(SEED + shop);
            PatternProblem problem = TreeShops.all(random, 6, 10);
            Instance instance = new Normaliser(problem).instance();
            List<Pattern> all = AllPatterns.of(instance);
            Optional<Bound> bound = bound(instance, random);
            if (all.isEmpty() || bound.isEmpty()) {
                continue;
            }
            Pricer pricer = new Pricer(instance);
            Enumeration enumeration = new Enumeration(instance, pricer, bound.get(), 1_000_000, Budget.endless());
            long target = bound.get().ceiling() + random.nextInt(1 + (int) instance.dearest() / 3);
            if (!enumeration.run(target, new int[instance.types.length])) {
                continue;
            }
            List<Pattern> found = enumeration.found();
            long distance = target * bound.get().scale() - bound.get().numerator();
            for (Pattern pattern : all) {
                if (lost(all, pattern, bound.get()) <= distance) {
                    kept++;
                    assertTrue(
                            found.stream().anyMatch(other -> standsFor(instance, other, pattern)),
                            "seed " + (SEED + shop) + " " + problem + ": a pattern is missing");
                } else {
                    left++;
                }
            }
        }
        assertTrue(kept > SHOPS && left > SHOPS, kept + " kept, " + left + " left out");
    }

    /** What a pattern earns less than the best of its kind, or than none. */
    private static long lost(List<Pattern> all, Pattern pattern, Bound bound) {
        long best = 0;
        for (Pattern other : all) {
            best = other.type == pattern.type ? Math.max(best, reducedProfit(other, bound)) : best;
        }
        return best - reducedProfit(pattern, bound);
    }

    private static long reducedProfit(Pattern pattern, Bound bound) {
        long reducedProfit = -pattern.cost * bound.scale();
        for (int t = 0; t < pattern.item.length; t++) {
            reducedProfit += pattern.count[t] * bound.price()[pattern.item[t]];
        }
        return reducedProfit;
    }

    /** The same, or more for the same money where a piece too many costs nothing. */
    private static boolean standsFor(Instance instance, Pattern other, Pattern pattern) {
        return other.equals(pattern) || AllPatterns.outdoes(instance, other, pattern);
    }

    static Optional<Bound> bound(Instance instance, Random random) {
        long[] price = new long[instance.items];
        for (int i = 0; i < price.length; i++) {
            price[i] = random.nextInt(8) == 0 ? 0 : random.nextInt(1 + (int) instance.dearest());
        }
        int[] supply = NodeBoundTest.supplies(instance);
        Pricer.Offers offers =
                new Pricer(instance).price(price, 1, instance.demand, new long[supply.length], false, Budget.endless());
        return new SafeBound(instance, Rejection.NEVER)
                .of(1, price, 0, offers.reducedProfit, instance.demand, new int[supply.length], supply);
    }
}
