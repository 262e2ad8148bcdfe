package bitterend.packing.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Bound;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.Undone;
import bitterend.packing.Urgency;
import bitterend.packing.check.BoundVerdict.State;
import bitterend.shops.BruteForce;
import bitterend.shops.FirstFit;
import bitterend.shops.PlanWriter;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import bitterend.stock.StockValue;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The bound computed again from integer duals, against brute force on tiny shops. */
final class BoundCheckerTest {
    private static final long SHOPS = Long.getLong("shops", 200);

    @Test
    void randomDuals_neverProveMoreThanTheOptimumCosts() {
        long positive = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            BruteForce.Best best = BruteForce.best(shop);
            CutPlan plan = PlanWriter.write(shop, best.packing());
            for (int draw = 0; draw < 10; draw++) {
                Bound claim = claim(shop, best.undone(), new SplittableRandom(100 * seed + draw));
                Cost root = root(shop, plan, claim);
                assertTrue(root.compareTo(best.cost()) <= 0, "seed " + seed + " draw " + draw + ": " + root);
                positive += root.compareTo(Cost.ZERO) > 0 ? 1 : 0;
            }
        }
        assertTrue(positive > SHOPS, "hardly any bound said anything: " + positive);
    }

    @Test
    void randomDuals_holdForTheCheapestPlanThatLeavesNoMoreUndone() {
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            CutPlan plan = PlanWriter.write(shop, FirstFit.of(shop));
            Undone undone = undone(shop, plan);
            Cost cheapest = BruteForce.cheapest(shop, undone).cost();
            Bound claim = claim(shop, undone, new SplittableRandom(seed));
            assertTrue(root(shop, plan, claim).compareTo(cheapest) <= 0, "seed " + seed);
        }
    }

    @Test
    void root_isTheSumOfDualsLessWhatEveryReelCanEarn() {
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            CutPlan plan = PlanWriter.write(shop, FirstFit.of(shop));
            Bound claim = claim(shop, undone(shop, plan), new SplittableRandom(seed));
            BoundClaim read = new BoundClaim(shop, plan, claim);
            assertEquals(Optional.empty(), read.contradiction().filter(wrong -> wrong.contains("dual")));
            long sum = 0;
            for (int k = 1; k <= Undone.CLASSES; k++) {
                sum -= claim.undonePrices().get(k - 1) * claim.undone().in(k);
            }
            for (Piece piece : shop.pieces()) {
                sum += read.dual(piece, !claim.undone().isNone());
            }
            for (Reel reel : shop.reels()) {
                sum -= EveryDraw.earning(read, reel, claim.scale());
            }
            assertEquals(
                    -Math.floorDiv(-sum, claim.scale()), root(shop, plan, claim).millis(), "seed " + seed);
        }
    }

    @Test
    void provenRoot_isConfirmedAndOneMoreIsNot() {
        int confirmed = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            BruteForce.Best best = BruteForce.best(shop);
            CutPlan plan = PlanWriter.write(shop, best.packing());
            Bound claim = claim(shop, best.undone(), new SplittableRandom(seed));
            Cost root = root(shop, plan, claim);
            assertEquals(State.CONFIRMED, verdict(shop, plan, claim, root).state(), "seed " + seed);
            assertEquals(
                    State.REFUTED,
                    verdict(shop, plan, claim, root.plus(new Cost(1))).state(),
                    "seed " + seed);
            confirmed++;
        }
        assertEquals(SHOPS, confirmed);
    }

    @Test
    void tooMuchWork_isSaidAndNotHidden() {
        PackingProblem day = PlantedDay.problem();
        CutPlan plan = PlantedDay.plan();
        Bound claim = claim(day, undone(day, plan), new SplittableRandom(3));
        List<BoundVerdict> verdicts = BoundChecker.check(day, Surgery.bounds(plan, claim), 0);
        assertEquals(List.of(State.NOT_CHECKED), states(verdicts));
        assertTrue(verdicts.get(0).sentence().contains("not re-checked"));
    }

    @Test
    void numbersTooLarge_areNotRechecked() {
        PackingProblem day = PlantedDay.problem();
        CutPlan plan = PlantedDay.plan();
        List<Bound.Dual> duals = day.pieces().stream()
                .map(piece -> new Bound.Dual(List.of(piece.id()), Long.MAX_VALUE / 2))
                .toList();
        Undone undone = undone(day, plan);
        List<Long> prices = Collections.nCopies(Undone.CLASSES, Long.MAX_VALUE / 2);
        Bound large = new Bound(ropes(day), Cost.ZERO, Cost.ZERO, 1, undone, prices, duals);
        assertEquals(List.of(State.NOT_CHECKED), states(BoundChecker.check(day, Surgery.bounds(plan, large))));
    }

    private static List<State> states(List<BoundVerdict> verdicts) {
        return verdicts.stream().map(BoundVerdict::state).toList();
    }

    private static BoundVerdict verdict(PackingProblem shop, CutPlan plan, Bound claim, Cost root) {
        Cost best = root.compareTo(plan.cost()) > 0 ? root : Cost.ZERO.compareTo(root) > 0 ? root : plan.cost();
        Bound bound = new Bound(
                claim.ropes(), best, root, claim.scale(), claim.undone(), claim.undonePrices(), claim.duals());
        return BoundChecker.check(shop, Surgery.bounds(plan, bound)).get(0);
    }

    private static Cost root(PackingProblem shop, CutPlan plan, Bound claim) {
        BoundClaim read = new BoundClaim(shop, plan, claim);
        Optional<String> contradiction = read.contradiction();
        assertTrue(contradiction.filter(wrong -> wrong.contains("dual of")).isEmpty(), "" + contradiction);
        return new RootBound(read, !claim.undone().isNone(), BoundChecker.WORK)
                .compute()
                .orElseThrow();
    }

    /** Duals about as high as rope, on a random scale, some of them zero. */
    private static Bound claim(PackingProblem shop, Undone undone, SplittableRandom random) {
        long scale = random.nextLong(1, 4);
        long level = random.nextLong(1, 2_000);
        List<Bound.Dual> duals = new ArrayList<>();
        for (Piece piece : shop.pieces()) {
            if (random.nextInt(10) > 0) {
                long price = random.nextLong(0, scale * level * piece.cut().mm() + 1);
                duals.add(new Bound.Dual(List.of(piece.id()), price));
            }
        }
        List<Long> prices = undone.isNone()
                ? Bound.noPrices()
                : random.longs(Undone.CLASSES, 0, scale * level * 1_000).boxed().toList();
        return new Bound(ropes(shop), Cost.ZERO, Cost.ZERO, scale, undone, prices, duals);
    }

    private static List<String> ropes(PackingProblem shop) {
        return List.copyOf(shop.ropes().keySet());
    }

    private static Undone undone(PackingProblem shop, CutPlan plan) {
        Urgency urgency = new Urgency(shop);
        return shop.pieces().stream()
                .filter(piece -> plan.unplanned().stream()
                        .anyMatch(unplanned -> unplanned.piece().equals(piece.id())))
                .map(urgency::of)
                .reduce(Undone.NONE, Undone::plus);
    }

    /** What a reel can earn, by trying every set of pieces on every run. */
    private static final class EveryDraw {
        private EveryDraw() {}

        static long earning(BoundClaim claim, Reel reel, long scale) {
            PackingProblem shop = claim.facts().problem();
            long best = 0;
            long before = -scale * DerivedDraw.fetching(claim.facts(), reel).millis();
            for (Run run : reel.runs()) {
                long here = earning(claim, reel, run, scale);
                best = here == Long.MIN_VALUE ? best : Math.max(best, before + here);
                before += Math.max(here, -scale * shop.prices().handling().millis());
            }
            return best;
        }

        private static long earning(BoundClaim claim, Reel reel, Run run, long scale) {
            List<Piece> pieces = claim.pieces().stream()
                    .filter(piece -> claim.facts().broken(piece, reel).isEmpty())
                    .toList();
            PackingProblem shop = claim.facts().problem();
            StockValue value = shop.valueOn(reel);
            long loss = shop.ropeOn(reel).cutting().loss().mm();
            long best = Long.MIN_VALUE;
            for (int some = 1; some < 1 << pieces.size(); some++) {
                long sum = 0;
                long worth = 0;
                for (int i = 0; i < pieces.size(); i++) {
                    if ((some >> i & 1) == 1) {
                        sum += loss
                                + pieces.get(i)
                                        .lengthOn(reel.rope())
                                        .orElseThrow()
                                        .mm();
                        worth += claim.dual(
                                pieces.get(i), !claim.bound().undone().isNone());
                    }
                }
                if (sum - loss <= run.length().mm()) {
                    Length left = new Length(Math.max(0, run.length().mm() - sum));
                    long drop = value.of(run.length()).minus(value.of(left)).millis();
                    best = Math.max(best, worth - scale * drop);
                }
            }
            return best;
        }
    }
}
