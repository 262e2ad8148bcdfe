package bitterend.packing.check;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.Sketch;
import bitterend.packing.Undone;
import bitterend.packing.check.BoundVerdict.State;
import bitterend.packing.proof.Holder;
import bitterend.packing.proof.PriceList;
import bitterend.packing.proof.PriceList.PiecePrice;
import bitterend.packing.proof.ProofNode;
import bitterend.packing.proof.ProofNode.Branch;
import bitterend.packing.proof.ProofNode.Leaf;
import bitterend.packing.proof.ProofTree;
import bitterend.packing.proof.RunOfReel;
import bitterend.packing.proof.Statement;
import bitterend.shops.BruteForce;
import bitterend.shops.PlanWriter;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a plan claims by cases: confirmed where the tree shows it, refuted where anything is wrong with it. */
final class ClaimCheckTest {
    private static final long SHOPS = Math.max(10, Long.getLong("shops", 200) / 4);

    @Test
    void provenCost_isConfirmedAndOneMoreIsNot() {
        int refuted = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            BruteForce.Best best = BruteForce.best(shop);
            ProofGoal goal = new ProofGoal(0, 2, best.undone().weights());
            RandomProof random = new RandomProof(shop, goal, seed);
            ProofTree tree = random.climb(random.tree(2), 60);
            Cost proven = new Cost(
                    RandomProof.check(shop, tree, goal).proven().orElseThrow().longValueExact());
            BoundVerdict verdict = verdict(shop, best, new Bound.CostProof(proven, tree));
            assertEquals(State.CONFIRMED, verdict.state(), "seed " + seed + ": " + verdict);
            assertTrue(verdict.confirmed().compareTo(proven) >= 0, "seed " + seed);
            if (proven.compareTo(best.cost()) < 0) {
                Cost more = proven.plus(new Cost(1));
                assertEquals(
                        State.REFUTED,
                        verdict(shop, best, new Bound.CostProof(more, tree)).state());
                refuted++;
            }
        }
        assertTrue(refuted > SHOPS / 8, "refuted " + refuted);
    }

    @Test
    void plantedFaults_areRefuted() {
        PackingProblem day = day();
        BruteForce.Best best = BruteForce.best(day);
        ProofTree sound = tree(root(), 1_700);
        BoundVerdict whole = verdict(day, best, new Bound.CostProof(best.cost(), sound));
        assertEquals(State.CONFIRMED, whole.state(), whole.sentence() + best);
        Map<String, ProofTree> faults = new LinkedHashMap<>();
        faults.put("a dual raised by 1 %", tree(root(), 1_717));
        faults.put("a child missing", tree(new Branch(load(1_700), ProofNode.EMPTY, new Leaf(1)), 1_700));
        faults.put("no branch", tree(new Leaf(0), 1_700));
        faults.put("a load moved", tree(new Branch(load(2_500), new Leaf(0), ProofNode.EMPTY), 1_700));
        faults.put("no such price list", tree(new Branch(load(1_700), new Leaf(0), new Leaf(7)), 1_700));
        faults.put("cases exchanged", tree(new Branch(load(1_700), new Leaf(1), new Leaf(0)), 1_700));
        faults.forEach((fault, tree) -> assertEquals(
                State.REFUTED,
                verdict(day, best, new Bound.CostProof(best.cost(), tree)).state(),
                fault));
    }

    @Test
    void leastUndone_isConfirmedClassByClass() {
        PackingProblem day = new Sketch()
                .with(reel("R", 1_000))
                .with(piece("a", 900))
                .with(piece("b", 900))
                .problem();
        BruteForce.Best best = BruteForce.best(day);
        UndoneWork work = new UndoneWork(day);
        int urgency = work.classOf(day.pieces().get(0));
        long weight = work.weight(day.pieces().get(0));
        ProofTree tree = ProofTree.of(
                List.of(new ProofTree.Line(List.of("a", "b"))),
                10,
                new PriceList(List.of(new PiecePrice(0, Holder.RACK, 10 * weight)), List.of(), List.of(), List.of()));
        BoundVerdict verdict = verdict(day, best, least(urgency, weight, tree));
        assertEquals(State.CONFIRMED, verdict.state());
        assertEquals(best.undone(), verdict.least());
        assertEquals(
                State.REFUTED,
                verdict(day, best, least(urgency, weight + 1, tree)).state());
        assertEquals(Undone.NONE, verdict(day, best, Bound.Cases.NONE).least());
    }

    @Test
    void tooMuchWork_isSaidAndNotHidden() {
        PackingProblem day = day();
        BruteForce.Best best = BruteForce.best(day);
        Bound.Cases cases = new Bound.Cases(List.of(new Bound.CostProof(best.cost(), tree(root(), 1_700))), List.of());
        CutPlan plan = PlanWriter.write(day, best.packing());
        BoundVerdict verdict = BoundChecker.check(day, Surgery.bounds(plan, bound(day, best, cases)), 8)
                .get(0);
        assertEquals(Cost.ZERO, verdict.confirmed());
        assertTrue(verdict.sentence().contains("not re-checked"), verdict.sentence());
    }

    /** What a plan may claim hangs on the state, not on how the sentence beside it is worded. */
    @Test
    void boundWithAPartNotComputedAgain_isNotWhollyConfirmed() {
        PackingProblem day = day();
        BruteForce.Best best = BruteForce.best(day);
        Bound.CostProof proof = new Bound.CostProof(best.cost(), tree(root(), 1_700));
        BoundVerdict whole = verdict(day, best, proof);
        assertTrue(whole.isWhollyConfirmed());
        BoundVerdict part = verdict(day, best, Bound.Cases.NONE);
        assertEquals(whole.state(), part.state(), part.sentence());
        assertFalse(part.isWhollyConfirmed());
    }

    /**
     * Less than 1,000 mm is worth nothing. Best is 1,700 and 800 off R, which uses it up, and 800 off Q: 3,300. Where R
     * carries 1,700 at most, 1,900 for the long piece prove it, else 1,700 do.
     */
    private static PackingProblem day() {
        return new Sketch()
                .loss(0)
                .value(length -> new Cost(length.mm() < 1_000 ? 0 : length.mm()))
                .with(reel("R", 2_500))
                .with(reel("Q", 2_700))
                .with(piece("a", 800))
                .with(piece("b", 800))
                .with(piece("c", 1_700))
                .problem();
    }

    private static ProofNode root() {
        return new Branch(load(1_700), new Leaf(0), new Leaf(1));
    }

    private static Statement load(long mm) {
        return new Statement.LoadAtMost(new RunOfReel("R", 1), mm);
    }

    private static ProofTree tree(ProofNode root, long longPiece) {
        List<ProofTree.Line> lines = new ArrayList<>();
        for (String id : List.of("a", "b", "c")) {
            lines.add(new ProofTree.Line(List.of(id)));
        }
        return new ProofTree(lines, 1, List.of(list(800, 800, 1_900), list(800, 800, longPiece)), root);
    }

    private static PriceList list(long a, long b, long c) {
        return new PriceList(
                List.of(
                        new PiecePrice(0, Holder.RACK, a),
                        new PiecePrice(1, Holder.RACK, b),
                        new PiecePrice(2, Holder.RACK, c)),
                List.of(),
                List.of(),
                List.of());
    }

    private static Bound.Cases least(int urgency, long weight, ProofTree tree) {
        return new Bound.Cases(List.of(), List.of(new Bound.LeastProof(urgency, weight, tree)));
    }

    private static BoundVerdict verdict(PackingProblem day, BruteForce.Best best, Bound.CostProof proof) {
        return verdict(day, best, new Bound.Cases(List.of(proof), List.of()));
    }

    private static BoundVerdict verdict(PackingProblem day, BruteForce.Best best, Bound.Cases cases) {
        CutPlan plan = PlanWriter.write(day, best.packing());
        return BoundChecker.check(day, Surgery.bounds(plan, bound(day, best, cases)))
                .get(0);
    }

    private static Bound bound(PackingProblem day, BruteForce.Best best, Bound.Cases cases) {
        List<String> ropes = List.copyOf(day.ropes().keySet());
        return new Bound(ropes, best.cost(), Cost.ZERO, 1, best.undone(), Bound.noPrices(), List.of()).with(cases);
    }
}
