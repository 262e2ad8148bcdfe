package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What rope alone costs: never more than the cheapest plan, and just that where nothing is wasted. */
final class MaterialBoundTest {
    private static final int SHOPS = Integer.getInteger("shops", 60);
    private static final long SCALE = 1L << 20;

    private static Optional<Bound> bound(PatternProblem problem, Rejection rejection) {
        Instance instance = new Normaliser(problem).instance();
        return new MaterialBound(instance, new Pricer(instance)).bound(rejection, SCALE, Budget.endless());
    }

    private static long ceiling(List<Item> items, ReelKind... reels) {
        return bound(new PatternProblem(items, List.of(reels)), Rejection.NEVER)
                .orElseThrow()
                .ceiling();
    }

    @Test
    void bound_isNeverAboveTheOptimum() {
        int found = 0;
        int tight = 0;
        for (int seed = 0; seed < SHOPS; seed++) {
            PatternProblem problem = RandomShops.problem(new Random(seed), 1);
            Exhaustive.Optimum optimum = new Exhaustive(problem).optimum();
            Optional<Bound> limited = bound(problem, Rejection.limited(optimum.weight()));
            assertTrue(limited.isEmpty() || limited.get().ceiling() <= optimum.cost(), "seed " + seed);
            if (optimum.weight() == 0) {
                Optional<Bound> whole = bound(problem, Rejection.NEVER);
                assertTrue(whole.isEmpty() || whole.get().ceiling() <= optimum.cost(), "seed " + seed);
                found += whole.isPresent() ? 1 : 0;
                tight += whole.isPresent() && 3 * whole.get().ceiling() >= 2 * optimum.cost() ? 1 : 0;
            }
        }
        assertTrue(tight * 4 >= found, tight + " of " + found + " are near");
    }

    @Test
    void reelsThatAreCutToTheLastBit_areWorthWhatTheyCost() {
        assertEquals(100, ceiling(List.of(Item.must(8)), ReelKind.whole(100, 50, ReelKind.UNLIMITED, List.of(25L))));
        assertEquals(
                150,
                ceiling(
                        List.of(Item.must(2), Item.must(5)),
                        ReelKind.whole(100, 50, ReelKind.UNLIMITED, List.of(50L, 40L))));
    }

    @Test
    void cheapReelsOfWhichThereIsOne_areTakenOnce() {
        ReelKind cheap = ReelKind.whole(100, 50, 1, List.of(25L));
        ReelKind dear = ReelKind.whole(100, 100, ReelKind.UNLIMITED, List.of(25L));
        PatternProblem problem = new PatternProblem(List.of(Item.must(8)), List.of(cheap, dear));
        assertEquals(150, bound(problem, Rejection.NEVER).orElseThrow().ceiling());
        Instance instance = new Normaliser(problem).instance();
        MaterialBound material = new MaterialBound(instance, new Pricer(instance));
        material.bound(Rejection.NEVER, SCALE, Budget.endless());
        assertArrayEquals(new long[] {50 * SCALE, 0}, material.reducedProfit());
    }

    @Test
    void eachRope_hasAPriceOfItsOwn() {
        long none = ReelKind.NOT_ALLOWED;
        ReelKind one = ReelKind.whole(100, 40, ReelKind.UNLIMITED, List.of(50L, none));
        ReelKind other = ReelKind.whole(60, 90, ReelKind.UNLIMITED, List.of(none, 20L));
        List<Item> items = List.of(Item.must(4), Item.must(6));
        assertEquals(260, ceiling(items, one, other));
        assertEquals(260, ceiling(items, other, one));
    }

    @Test
    void ropeThatIsPaidByLength_costsItsLength() {
        ReelKind reel = new ReelKind(List.of(Run.of(100)), 9, 0, 0, List.of(30L, 7L), left -> 2 * left);
        assertEquals(2 * (3 * 30 + 2 * 7), ceiling(List.of(Item.must(3), Item.must(2)), reel));
    }

    @Test
    void aPieceThatFitsNowhere_takesNothingFromTheBoundWhereItMayBeLeftOut() {
        ReelKind reel = ReelKind.whole(100, 50, ReelKind.UNLIMITED, List.of(25L, 101L));
        PatternProblem problem = new PatternProblem(List.of(new Item(8, 3), new Item(1, 2)), List.of(reel));
        assertEquals(100, bound(problem, Rejection.limited(2)).orElseThrow().ceiling());
        assertEquals(88, bound(problem, Rejection.limited(5)).orElseThrow().ceiling());
    }

    @Test
    void weightThatMayBeLeftOut_isLeftOutWhereItSavesMost() {
        ReelKind reel = ReelKind.whole(100, 10, 7, List.of(100L, 50L));
        List<Item> items = List.of(new Item(3, 1), new Item(2, 2));
        PatternProblem problem = new PatternProblem(items, List.of(reel));
        assertEquals(40, bound(problem, Rejection.limited(0)).orElseThrow().ceiling());
        assertEquals(30, bound(problem, Rejection.limited(1)).orElseThrow().ceiling());
        assertEquals(10, bound(problem, Rejection.limited(3)).orElseThrow().ceiling());
    }

    @Test
    void reelsThatCostNothing_orWhereTheWeightIsTheCost_haveNone() {
        PatternProblem free = new PatternProblem(
                List.of(Item.must(8)), List.of(ReelKind.whole(100, 0, ReelKind.UNLIMITED, List.of(25L))));
        assertTrue(bound(free, Rejection.NEVER).isEmpty());
        PatternProblem dear =
                new PatternProblem(List.of(new Item(8, 1)), List.of(ReelKind.whole(100, 50, 1, List.of(25L))));
        assertTrue(bound(dear, Rejection.PRICED).isEmpty());
        assertTrue(bound(dear, Rejection.limited(4)).isPresent());
    }
}
