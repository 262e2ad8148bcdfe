package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Reels of three pieces that leave nothing over, the pieces mixed: E. Falkenauer, "A hybrid grouping genetic algorithm for
 * bin packing", Journal of Heuristics 2 (1996) 5-30. The fewest reels are known by the way they are made.
 */
final class PieceExchangeTest {
    @Test
    void tripletsInAThousandSteps_areAllClosed() {
        for (int seed = 0; seed < 6; seed++) {
            assertEquals(134, reelsAfter(triplets(134, 1_000, seed)), "seed " + seed);
        }
    }

    /** Hardly two pieces are alike here. */
    @Test
    void tripletsInTenThousandSteps_areNearlyAllClosed() {
        int above = 0;
        for (int seed = 0; seed < 8; seed++) {
            above += reelsAfter(triplets(134, 10_000, seed)) - 134;
        }
        assertTrue(above <= 3, "reels above the fewest: " + above);
    }

    @Test
    void piecesThatWasteALittle_stayAllPlanned() {
        int better = 0;
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<Long> lengths = new ArrayList<>(triplets(12, 100, seed));
            for (int shortened = 0; shortened < 2; shortened++) {
                lengths.set(shortened, lengths.get(shortened) - random.nextInt(2));
            }
            Instance instance = instance(lengths, 100);
            Incumbent best = started(instance, 1);
            int before = best.plan().size();
            new PieceExchange(instance, best, seed, Budget.endless().part(100_000)).run();
            assertTrue(best.complete(), "seed " + seed);
            assertTrue(best.plan().size() <= before, "seed " + seed);
            better += best.plan().size() < before ? 1 : 0;
        }
        assertTrue(better > 20, "hardly ever better: " + better);
    }

    private static int reelsAfter(List<Long> lengths) {
        long cap = lengths.stream().limit(3).mapToLong(Long::longValue).sum();
        Instance instance = instance(lengths, cap);
        Incumbent best = started(instance, 4);
        new PieceExchange(instance, best, 1, Budget.endless().part(30_000_000)).run();
        return best.plan().size();
    }

    private static Incumbent started(Instance instance, int rounds) {
        Incumbent best = new Incumbent(instance, progress -> {});
        new InitialPlans(instance, best, 1, Budget.endless()).run(rounds);
        return best;
    }

    private static Instance instance(List<Long> lengths, long cap) {
        List<Item> items = lengths.stream().map(length -> Item.must(1)).toList();
        return new Normaliser(new PatternProblem(items, List.of(ReelKind.whole(cap, 1, ReelKind.UNLIMITED, lengths))))
                .instance();
    }

    private static List<Long> triplets(int reels, long cap, long seed) {
        Random random = new Random(seed);
        List<Long> lengths = new ArrayList<>();
        while (lengths.size() < 3 * reels) {
            long longest = random.nextLong(cap * 38 / 100, cap * 49 / 100 + 1);
            long next = random.nextLong(cap / 4, (cap - longest) / 2 + 1);
            long last = cap - longest - next;
            lengths.addAll(List.of(longest, next, last));
        }
        return lengths;
    }
}
