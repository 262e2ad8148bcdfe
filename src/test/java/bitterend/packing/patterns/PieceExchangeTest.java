package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
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

    @Test
    void betterPlans_areOfferedOnTheWay_theLoosePiecesAmongThem() {
        int onTheWay = 0;
        for (int seed = 0; seed < 3; seed++) {
            Instance instance = instance(triplets(134, 1_000, seed), 1_000);
            List<Long> costs = new ArrayList<>();
            Incumbent best = new Incumbent(instance, progress -> costs.add(progress.cost()));
            new InitialPlans(instance, best, 1, Budget.endless()).run(1);
            long before = best.cost();
            new PieceExchange(instance, best, 1, Budget.endless().part(30_000_000)).run();
            onTheWay += (int)
                    costs.stream().filter(cost -> cost < before && cost > 134).count();
        }
        assertTrue(onTheWay > 0, "no better plan on the way");
    }

    @Test
    void planThatCannotBeBetter_orWastesMuch_isLeftAsItIs() {
        leftAsItIs(instance(List.of(60L, 50L, 50L, 40L), 100), Budget.endless());
        leftAsItIs(instance(List.of(60L, 60L, 60L), 100), Budget.endless());
    }

    private static void leftAsItIs(Instance instance, Budget budget) {
        Incumbent best = started(instance, 1);
        List<Pattern> before = best.plan();
        new PieceExchange(instance, best, 1, budget).run();
        assertSame(before, best.plan());
        assertEquals(0, budget.spent());
    }

    @Test
    void budget_isKept_andThePlanStaysSound() {
        for (long steps : new long[] {0, 20_000, 200_000}) {
            Instance instance = instance(triplets(134, 10_000, 3), 10_000);
            Incumbent best = started(instance, 1);
            Budget budget = Budget.endless().part(steps);
            new PieceExchange(instance, best, 1, budget).run();
            assertTrue(budget.spent() <= steps + 50_000, steps + " steps: " + budget.spent());
            int[] cut = new int[instance.items];
            for (Pattern reel : best.plan()) {
                for (int t = 0; t < reel.item.length; t++) {
                    cut[reel.item[t]] += reel.count[t];
                }
            }
            assertArrayEquals(instance.demand, cut);
        }
    }

    @Test
    void onlyReelsOfOneKindWithoutLimit_areAskedFor() {
        assertTrue(PieceExchange.isFor(instance(List.of(60L, 40L), 100)));
        assertFalse(PieceExchange.isFor(new Normaliser(
                        new PatternProblem(List.of(Item.must(3)), List.of(ReelKind.whole(100, 1, 2, List.of(60L)))))
                .instance()));
        assertTrue(PieceExchange.isFor(
                new Normaliser(PatternProblem.oneLength(100, List.of(60L), List.of(1 << 16))).instance()));
        assertFalse(PieceExchange.isFor(
                new Normaliser(PatternProblem.oneLength(100, List.of(60L), List.of((1 << 16) + 1))).instance()));
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
