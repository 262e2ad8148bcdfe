package bitterend.packing.check;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Undone;
import bitterend.packing.proof.ProofTree;
import bitterend.shops.BruteForce;
import bitterend.shops.FirstFit;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import bitterend.stock.Reel;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Proofs by cases against brute force on tiny shops: whatever numbers stand at the leaves, no plan beats the bound. */
final class ProofCheckTest {
    private static final long SHOPS = Math.max(40, Long.getLong("shops", 200) / 4);
    private static final int STEPS = 120;

    @Test
    void anyNumbers_proveNoMoreThanTheCheapestPlanCosts() {
        int tight = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            BruteForce.Best best = BruteForce.best(shop);
            ProofGoal goal = new ProofGoal(0, 1 + seed % 3, best.undone().weights());
            RandomProof random = new RandomProof(shop, goal, seed);
            ProofTree tree = random.climb(random.tree((int) (seed % 4)), STEPS);
            Optional<BigInteger> proven = RandomProof.check(shop, tree, goal).proven();
            assertTrue(proven.isPresent(), "seed " + seed + ": a plan is there, and no leaf has any");
            int order = proven.get().compareTo(BigInteger.valueOf(best.cost().millis()));
            assertTrue(order <= 0, "seed " + seed + ": " + proven.get() + " proven, " + best + " costs " + tree);
            tight += order == 0 ? 1 : 0;
        }
        assertTrue(tight > SHOPS / 5, "hardly any bound was tight: " + tight);
    }

    @Test
    void anyNumbers_holdForPlansThatLeaveMoreUndone() {
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            Undone undone = new PlanPrice(shop).undone(FirstFit.of(shop));
            BruteForce.Best best = BruteForce.cheapest(shop, undone);
            ProofGoal goal = new ProofGoal(0, 2, undone.weights());
            RandomProof random = new RandomProof(shop, goal, seed);
            ProofTree tree = random.climb(random.tree((int) (seed % 4)), STEPS);
            Optional<BigInteger> proven = RandomProof.check(shop, tree, goal).proven();
            assertTrue(
                    proven.isPresent()
                            && proven.get()
                                            .compareTo(BigInteger.valueOf(
                                                    best.cost().millis()))
                                    <= 0,
                    "seed " + seed + ": " + proven + " proven, " + best);
        }
    }

    @Test
    void anyNumbers_proveNoMoreUndoneThanThereMustBe() {
        int tight = 0;
        int some = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            Undone least = BruteForce.best(shop).undone();
            for (int urgency = 1; urgency <= Undone.CLASSES; urgency++) {
                if (least.in(urgency) == 0 && seed % 5 != urgency % 5) {
                    continue;
                }
                ProofGoal goal =
                        new ProofGoal(urgency, 1 + seed % 3, least.weights().subList(0, urgency - 1));
                RandomProof random = new RandomProof(shop, goal, seed);
                ProofTree tree = random.climb(random.tree((int) (seed % 4)), STEPS);
                Optional<BigInteger> proven =
                        RandomProof.check(shop, tree, goal).proven();
                assertTrue(proven.isPresent(), "seed " + seed);
                int order = proven.get().compareTo(BigInteger.valueOf(least.in(urgency)));
                assertTrue(order <= 0, "seed " + seed + ": " + proven.get() + " proven, " + least);
                some += least.in(urgency) > 0 ? 1 : 0;
                tight += least.in(urgency) > 0 && order == 0 ? 1 : 0;
            }
        }
        assertTrue(tight > some / 3, "hardly any bound was tight: " + tight + " of " + some);
    }

    /** Reels that are alike are loaded in order: none of them may be thought fuller than another plan makes it. */
    @Test
    void anyNumbers_proveNoMoreWhereReelsAreAlike() {
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = twins(RandomShop.of(seed, new ShopSize(1, 1, 4, 1, 6_000)));
            BruteForce.Best best = BruteForce.best(shop);
            ProofGoal goal = new ProofGoal(0, 1, best.undone().weights());
            RandomProof random = new RandomProof(shop, goal, seed);
            ProofTree tree = random.climb(random.tree(3), STEPS);
            Optional<BigInteger> proven = RandomProof.check(shop, tree, goal).proven();
            assertTrue(
                    proven.isPresent()
                            && proven.get()
                                            .compareTo(BigInteger.valueOf(
                                                    best.cost().millis()))
                                    <= 0,
                    "seed " + seed + ": " + proven + " proven, " + best + tree);
        }
    }

    /** A set that may lie on either of two lots, on one reel of it or on several. */
    @Test
    void anyNumbers_proveNoMoreWhereASetLiesTogether() {
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = withSet(RandomShop.of(seed, new ShopSize(1, 4, 4, 1, 6_000)));
            BruteForce.Best best = BruteForce.best(shop);
            ProofGoal goal = new ProofGoal(0, 1, best.undone().weights());
            RandomProof random = new RandomProof(shop, goal, seed);
            ProofTree tree = random.climb(random.tree(3), STEPS);
            Optional<BigInteger> proven = RandomProof.check(shop, tree, goal).proven();
            assertTrue(
                    proven.isPresent()
                            && proven.get()
                                            .compareTo(BigInteger.valueOf(
                                                    best.cost().millis()))
                                    <= 0,
                    "seed " + seed + ": " + proven + " proven, " + best + tree);
        }
    }

    /** The reels of a shop on two lots in turn, its first two pieces a set. */
    private static PackingProblem withSet(PackingProblem shop) {
        List<Reel> reels = new ArrayList<>();
        for (Reel reel : shop.reels()) {
            reels.add(renamed(reel, reel.id(), "L" + reels.size() % 2));
        }
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : shop.pieces()) {
            Piece.Matching matching =
                    pieces.size() < 2 ? new Piece.Matching("S", Piece.Bond.ONE_LOT) : Piece.Matching.NONE;
            pieces.add(new Piece(
                    piece.pieceId(),
                    piece.source(),
                    piece.choices(),
                    matching,
                    "",
                    false,
                    piece.finished(),
                    piece.ends()));
        }
        return day(shop, pieces, reels);
    }

    private static PackingProblem day(PackingProblem shop, List<Piece> pieces, List<Reel> reels) {
        return new PackingProblem(
                shop.day(), shop.ropes(), pieces, reels, shop.values(), shop.prices(), List.of(), Map.of());
    }

    private static Reel renamed(Reel reel, String id, String lot) {
        return new Reel(
                id,
                reel.rope(),
                lot,
                reel.contents(),
                reel.flaws(),
                reel.papers(),
                reel.custody(),
                reel.full(),
                reel.where());
    }

    /** Every reel of a shop three times, without pins. */
    private static PackingProblem twins(PackingProblem shop) {
        List<Reel> reels = new ArrayList<>();
        for (int twin = 1; twin <= 3; twin++) {
            for (Reel reel : shop.reels()) {
                String lot = twin == 1 ? reel.lot() : reel.lot() + shop.pieces().size() % 2;
                reels.add(renamed(reel, reel.id() + "-" + twin, lot));
            }
        }
        return day(shop, shop.pieces(), reels);
    }
}
