package bitterend.packing.search;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece.Bond;
import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Sketch;
import bitterend.packing.check.PlanChecker;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.model.Bench;
import bitterend.packing.model.BenchLayout;
import bitterend.packing.order.CuttingOrder;
import bitterend.shops.BruteForce;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

final class SearchTest {
    @Test
    void scores_standEveryAssertionOfTheSolver() {
        for (long seed = 0; seed < 40; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            Profile asserting = new Profile(Profile.config(new TerminationConfig().withScoreCalculationCountLimit(400L))
                    .withEnvironmentMode(EnvironmentMode.FULL_ASSERT));
            Packing found = Search.improve(shop, Packing.EMPTY, effort(seed, 400), asserting, Cost.ZERO);
            assertSound(shop, found, seed);
        }
    }

    @Test
    void answer_isNeverWorseThanTheStart() {
        for (long seed = 0; seed < 40; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            Packing start = new GreedyPacker(shop).best();
            Packing found = Search.improve(shop, start, effort(seed, 1_000), Profile.reproducible(), Cost.ZERO);
            assertSound(shop, found, seed);
            assertTrue(compare(shop, found, start) <= 0, "seed " + seed);
        }
    }

    @Test
    void answer_isTheOptimumOfNearlyEveryTinyShop() {
        int optimal = 0;
        for (long seed = 0; seed < 100; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            Packing found = Search.improve(
                    shop, new GreedyPacker(shop).best(), effort(seed, 1_500), Profile.reproducible(), Cost.ZERO);
            BruteForce.Best best = BruteForce.best(shop);
            int order = compare(shop, found, best.packing());
            assertTrue(order >= 0, "better than every way to cut it: seed " + seed);
            optimal += order == 0 ? 1 : 0;
        }
        assertTrue(optimal >= 97, optimal + " of 100");
    }

    @Test
    void score_isTheTruePriceOnceTheShapingIsOff() {
        for (long seed = 0; seed < 100; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            Packing start = new GreedyPacker(shop).best();
            Bench bench = new BenchLayout(shop, 0).with(start);
            assertEquals(new PlanPrice(shop).of(start).millis(), Scores.softCost(bench), "seed " + seed);
            assertEquals(new PlanPrice(shop).undone(start), Scores.undone(bench), "seed " + seed);
        }
    }

    @Test
    void answer_repeatsUnderALimitOfWork() {
        PackingProblem shop = RandomShop.of(11, ShopSize.DAY);
        Packing start = new GreedyPacker(shop).best();
        Packing once = Search.improve(shop, start, effort(3, 5_000), Profile.reproducible(), Cost.ZERO);
        Packing again = Search.improve(shop, start, effort(3, 5_000), Profile.reproducible(), Cost.ZERO);
        assertEquals(once, again);
    }

    @Test
    void answer_isTheSameBesideOtherSearches() throws Exception {
        PackingProblem shop = RandomShop.of(11, ShopSize.DAY);
        Packing start = new GreedyPacker(shop).best();
        Callable<Packing> one = () -> Search.improve(shop, start, effort(3, 3_000), Profile.reproducible(), Cost.ZERO);
        Packing alone = one.call();
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            for (Future<Packing> answer : two.invokeAll(List.of(one, one))) {
                assertEquals(alone, answer.get());
            }
        } finally {
            two.shutdownNow();
        }
    }

    @Test
    void setGivesWayToUrgentPiecesAndTheyToAnUrgentSet() {
        Sketch sketch = new Sketch()
                .with(reel("K1", 12_000))
                .with(piece("S/1.1", 5_000).order("S").set("S", Bond.ONE_LOT), "K1", 1)
                .with(piece("S/1.2", 5_000).order("S").set("S", Bond.ONE_LOT), "K1", 1)
                .with(piece("R/1.1", 6_000).order("R").priority(1))
                .with(piece("R/1.2", 3_000).order("R").priority(1));
        assertEquals(Set.of("R/1.1", "R/1.2"), improved(sketch).places().keySet());
        Sketch other = new Sketch()
                .with(reel("K1", 12_000))
                .with(piece("S/1.1", 5_000).order("S").priority(1).set("S", Bond.ONE_LOT))
                .with(piece("S/1.2", 5_000).order("S").priority(1).set("S", Bond.ONE_LOT))
                .with(piece("R/1.1", 6_000).order("R"), "K1", 1)
                .with(piece("R/1.2", 3_000).order("R"), "K1", 1);
        assertEquals(Set.of("S/1.1", "S/1.2"), improved(other).places().keySet());
    }

    private static Packing improved(Sketch sketch) {
        return Search.improve(sketch.problem(), sketch.packing(), effort(1, 2_000), Profile.reproducible(), Cost.ZERO);
    }

    @Test
    void search_endsAtOnceWhenTheStartMeetsTheBound() {
        Sketch sketch =
                new Sketch().with(reel("K1", 9_000)).with(reel("K2", 4_000)).with(piece("P1", 2_000), "K1", 1);
        Packing start = sketch.packing();
        Cost price = new PlanPrice(sketch.problem()).of(start);
        assertSame(
                start,
                Search.improve(sketch.problem(), start, Effort.of(Duration.ofMinutes(5)), Profile.thorough(), price));
    }

    @Test
    void search_endsWhenItReachesTheBound() {
        Sketch sketch = new Sketch()
                .value(length -> new Cost(length.mm() < 3_000 ? 0 : length.mm()))
                .with(reel("K1", 9_000))
                .with(reel("K2", 2_000))
                .with(piece("P1", 2_000), "K1", 1);
        Packing found = Search.improve(
                sketch.problem(),
                sketch.packing(),
                Effort.of(Duration.ofMinutes(5)),
                new Profile(Profile.config(new TerminationConfig().withSpentLimit(Duration.ofMinutes(5)))),
                Cost.ZERO);
        assertEquals("K2", found.placeOf("P1").orElseThrow().reel());
    }

    @Test
    void search_keepsTheBestWhenCalledOff() {
        PackingProblem shop = RandomShop.of(14, ShopSize.DAY);
        Packing start = new GreedyPacker(shop).best();
        AtomicInteger better = new AtomicInteger();
        List<Cost> told = new ArrayList<>();
        Effort effort = new Effort(Duration.ofMinutes(5), Long.MAX_VALUE, 1, 1, () -> better.get() >= 3, progress -> {
            better.incrementAndGet();
            told.add(progress.cost());
        });
        Packing found = Search.improve(shop, start, effort, Profile.thorough(), Cost.ZERO);
        assertEquals(told.get(told.size() - 1), new PlanPrice(shop).of(found));
    }

    @Test
    void search_bringsAWholeSetIntoThePlan() {
        PackingProblem shop = new Sketch()
                .with(reel("K1", 5_000).lot("L1"))
                .with(reel("K2", 5_000).lot("L2"))
                .with(reel("K3", 5_000).lot("L2"))
                .with(piece("P1", 4_000).set("S", Bond.ONE_LOT))
                .with(piece("P2", 4_000).set("S", Bond.ONE_LOT))
                .with(piece("P3", 4_000))
                .problem();
        Packing found = Search.improve(shop, Packing.EMPTY, effort(1, 2_000), Profile.reproducible(), Cost.ZERO);
        assertEquals(3, found.places().size());
        assertEquals("K1", found.placeOf("P3").orElseThrow().reel());
    }

    private static Effort effort(long seed, long work) {
        return new Effort(Duration.ofMinutes(5), work, seed, 1, () -> false, progress -> {});
    }

    private static int compare(PackingProblem shop, Packing a, Packing b) {
        PlanPrice price = new PlanPrice(shop);
        int work = price.undone(a).compareTo(price.undone(b));
        return work != 0 ? work : price.of(a).compareTo(price.of(b));
    }

    private static void assertSound(PackingProblem shop, Packing packing, long seed) {
        assertEquals(List.of(), PlanChecker.check(shop, new CuttingOrder(shop).plan(packing)), "seed " + seed);
    }
}
