package bitterend.packing.strategy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.PlanPrice;
import bitterend.packing.Undone;
import bitterend.packing.check.PlanChecker;
import bitterend.packing.check.UndoneWork;
import bitterend.packing.order.CuttingOrder;
import bitterend.shops.BruteForce;
import bitterend.shops.ShortRack;
import bitterend.shops.TrivialPass;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The urgent work first, on racks that are too short; more shops with {@code -Dshops=400 -Dfirst=1000}. */
final class LeastUndoneTest {
    private static final long SHOPS = Long.getLong("shops", 200);
    private static final long FIRST = Long.getLong("first", 0);

    /** Without the search, and limited by work, not by the clock. */
    private static final Packer PACKER = FullStrategy.patternsAlone();

    @Test
    void plan_leavesNoMoreUndoneThanAnyTrivialPass() {
        List<String> behind = new ArrayList<>();
        for (long seed = FIRST; seed < FIRST + SHOPS / 2; seed++) {
            PackingProblem shop = ShortRack.day(seed);
            Undone ours = undone(shop, plan(shop, 1_000));
            for (Map.Entry<String, Packing> pass : TrivialPass.all(shop).entrySet()) {
                Undone theirs = undone(shop, pass.getValue());
                if (theirs.isLessThan(ours)) {
                    behind.add("seed " + seed + ", " + pass.getKey() + ": " + theirs + ", ours " + ours);
                }
            }
        }
        assertEquals(List.of(), behind);
    }

    @Test
    void plan_ofATinyShopIsTheBestThereIs() {
        for (long seed = FIRST; seed < FIRST + SHOPS; seed++) {
            assertBest(seed);
        }
    }

    /** The bound is met to less than a coin there; the best plan is cheaper by a part of one. */
    @Test
    void plan_ofATinyShopIsTheBestToThePartOfACoin() {
        assertBest(31_512);
        assertBest(31_556);
    }

    private static void assertBest(long seed) {
        PackingProblem shop = ShortRack.tiny(seed);
        Packing ours = plan(shop, 1_000);
        BruteForce.Best best = BruteForce.best(shop);
        assertEquals(best.undone(), undone(shop, ours), "seed " + seed);
        assertEquals(best.cost(), new PlanPrice(shop).of(ours), "seed " + seed);
    }

    @Test
    void placesOfATrivialPassAsPins_giveNoBetterPlan() {
        for (long seed = FIRST; seed < FIRST + SHOPS / 40; seed++) {
            PackingProblem shop = ShortRack.day(seed);
            PlanPrice price = new PlanPrice(shop);
            Packing ours = plan(shop, 1_000);
            for (Packing pass : TrivialPass.all(shop).values()) {
                Packing pinned = plan(pinned(shop, pass), 100);
                assertTrue(!price.undone(pinned).isLessThan(price.undone(ours)), "seed " + seed);
            }
        }
    }

    private static PackingProblem pinned(PackingProblem shop, Packing pass) {
        List<Pin> pins = new ArrayList<>();
        pass.places().forEach((piece, run) -> pins.add(new Pin(piece, run.reel())));
        return new PackingProblem(
                shop.day(),
                shop.ropes(),
                shop.pieces(),
                shop.reels(),
                shop.values(),
                shop.prices(),
                pins,
                shop.earlier(),
                shop.calendar());
    }

    private static Packing plan(PackingProblem shop, long workPerPiece) {
        long work = workPerPiece * shop.pieces().size();
        Effort effort = new Effort(Duration.ofHours(1), work, 0, 1, () -> false, progress -> {});
        Packing packing = PACKER.pack(shop, effort).packing();
        CutPlan plan = new CuttingOrder(shop).plan(packing);
        assertEquals(List.of(), PlanChecker.check(shop, plan));
        return packing;
    }

    /** By the reading of the checker. */
    private static Undone undone(PackingProblem shop, Packing packing) {
        UndoneWork work = new UndoneWork(shop);
        return shop.pieces().stream()
                .filter(piece -> packing.placeOf(piece.id()).isEmpty())
                .map(work::of)
                .reduce(Undone.NONE, Undone::plus);
    }
}
