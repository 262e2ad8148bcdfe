package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.linear.Budget;
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
            Task task = new Normaliser(problem).task();
            List<Pattern> all = AllPatterns.of(task);
            Optional<Bound> bound = bound(task, random);
            if (all.isEmpty() || bound.isEmpty()) {
                continue;
            }
            Pricer pricer = new Pricer(task);
            Enumeration enumeration = new Enumeration(task, pricer, bound.get(), 1_000_000, Budget.endless());
            long target = bound.get().ceiling() + random.nextInt(1 + (int) task.dearest() / 3);
            if (!enumeration.run(target, new int[task.kinds.length])) {
                continue;
            }
            List<Pattern> found = enumeration.found();
            long distance = target * bound.get().scale() - bound.get().numerator();
            for (Pattern pattern : all) {
                if (lost(all, pattern, bound.get()) <= distance) {
                    kept++;
                    assertTrue(
                            found.stream().anyMatch(other -> standsFor(task, other, pattern)),
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
            best = other.kind == pattern.kind ? Math.max(best, net(other, bound)) : best;
        }
        return best - net(pattern, bound);
    }

    private static long net(Pattern pattern, Bound bound) {
        long net = -pattern.cost * bound.scale();
        for (int t = 0; t < pattern.item.length; t++) {
            net += pattern.count[t] * bound.price()[pattern.item[t]];
        }
        return net;
    }

    /** The same, or more for the same money where a piece too many costs nothing. */
    private static boolean standsFor(Task task, Pattern other, Pattern pattern) {
        return other.equals(pattern) || AllPatterns.outdoes(task, other, pattern);
    }

    static Optional<Bound> bound(Task task, Random random) {
        long[] price = new long[task.items];
        for (int i = 0; i < price.length; i++) {
            price[i] = random.nextInt(8) == 0 ? 0 : random.nextInt(1 + (int) task.dearest());
        }
        int[] supply = NodeBoundTest.supplies(task);
        Pricer.Offers offers =
                new Pricer(task).price(price, 1, task.demand, new long[supply.length], false, Budget.endless());
        return new SafeBound(task, Leaving.NEVER)
                .of(1, price, 0, offers.net, task.demand, new int[supply.length], supply);
    }
}
