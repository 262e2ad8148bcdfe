package bitterend.packing.check;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece.Bond;
import bitterend.measure.Cost;
import bitterend.packing.PackingProblem;
import bitterend.packing.Prices;
import bitterend.packing.Sketch;
import bitterend.packing.proof.Holder;
import bitterend.packing.proof.PriceList;
import bitterend.packing.proof.PriceList.PiecePrice;
import bitterend.packing.proof.PriceList.Touch;
import bitterend.packing.proof.ProofNode;
import bitterend.packing.proof.ProofNode.Branch;
import bitterend.packing.proof.ProofNode.Leaf;
import bitterend.packing.proof.ProofTree;
import bitterend.packing.proof.RunOfReel;
import bitterend.packing.proof.Statement;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What leaves prove, worked out by hand, each where a careless reading would prove another amount. A millimetre of rope is
 * worth 1, a cut loses 10 mm, nothing may be left undone.
 */
final class ProofByHandTest {
    private static final Cost HANDLING = new Cost(1_000);
    private static final Cost SPLIT = new Cost(100);

    @Test
    void oneLeaf_provesThePricesLessWhatEveryReelEarns() {
        Sketch day = new Sketch().with(reel("R", 1_000)).with(piece("a", 290)).with(piece("b", 590));
        assertEquals("[700]", leaves(day, prices(300, 400), new Leaf(0)));
        assertEquals("[900]", leaves(day, prices(400, 700), new Leaf(0)));
    }

    @Test
    void shorterLoad_doesNotStandForOneThatReachesFarEnough() {
        Sketch day = new Sketch()
                .with(reel("R", 800))
                .with(reel("Q", 900))
                .with(piece("a", 290))
                .with(piece("b", 590));
        ProofNode tree = new Branch(load("R", 1, 499), new Leaf(0), new Leaf(0));
        // a earns 200 on either reel; where R must carry 500 and more, b alone does, at a loss of 200
        assertEquals("[500, 900]", leaves(day, prices(500, 400), tree));
    }

    @Test
    void piecesWithoutPrice_fillARunThatMustCarryMore() {
        Sketch day = new Sketch().with(reel("R", 1_000)).with(piece("a", 290)).with(piece("filler", 240));
        ProofNode tree = new Branch(load("R", 1, 400), ProofNode.EMPTY, new Leaf(0));
        PriceList onlyA = new PriceList(List.of(new PiecePrice(0, Holder.RACK, 300)), List.of(), List.of(), List.of());
        ProofNode all = new Branch(load("R", 1, 400), new Leaf(0), new Leaf(0));
        assertEquals("[300, 550]", leaves(day, onlyA, all));
        assertThrows(ProofRefused.class, () -> leaves(day, onlyA, tree));
    }

    @Test
    void runBeforeTheLast_isCutAtALossWhereHandlingCostsMore() {
        Sketch day = new Sketch()
                .prices(prices(Cost.ZERO, HANDLING))
                .with(reel("R", 1_000).flaw(400, 410))
                .with(piece("short", 90))
                .with(piece("long", 500));
        // run 1 takes the short piece at a loss of 50, run 2 earns 990
        assertEquals("[610]", leaves(day, prices(50, 1_500), new Leaf(0)));
    }

    @Test
    void charges_areTakenByRun() {
        Sketch day = new Sketch()
                .with(reel("R", 1_000).flaw(400, 410))
                .with(piece("a", 290))
                .with(piece("b", 390));
        List<Touch> both = List.of(new Touch("A", run("R", 1), 30), new Touch("A", run("R", 2), 40));
        PriceList list = new PriceList(rack(500, 500), both, List.of(), List.of());
        // two pay 500 each, less 70; each run earns 200 with a, less its own charge
        assertEquals("[600]", leaves(day, list, new Leaf(0)));
    }

    @Test
    void orderOnTwoLots_paysForTheSecond() {
        Sketch day = new Sketch()
                .prices(prices(SPLIT, Cost.ZERO))
                .with(reel("R1", 500).lot("1"))
                .with(reel("R2", 500).lot("2"))
                .with(piece("a", 390))
                .with(piece("b", 390));
        List<Touch> charges = List.of(new Touch("A", run("R1", 1), 50), new Touch("A", run("R2", 1), 50));
        // each lot earns 50 less 50; two pieces pay 450 each, less 50 for each lot, and the second lot costs 100
        PriceList list = new PriceList(rack(450, 450), charges, List.of(), List.of());
        assertEquals("[850]", leaves(day, list, new Leaf(0)));
        PriceList without = new PriceList(rack(450, 450), List.of(), List.of(), List.of());
        assertEquals("[800]", leaves(day, without, new Leaf(0)));
    }

    @Test
    void set_paysWhereItLiesTogether() {
        Sketch day = new Sketch()
                .with(reel("R1", 900).lot("1"))
                .with(reel("R2", 500).lot("2"))
                .with(reel("R3", 500).lot("2"))
                .with(piece("a", 390).set("S", Bond.ONE_LOT))
                .with(piece("b", 390).set("S", Bond.ONE_LOT));
        Holder second = new Holder.Lot(Sketch.ROPE, "2");
        List<PiecePrice> priced = new ArrayList<>(rack(400, 400));
        priced.add(new PiecePrice(0, second, 600));
        priced.add(new PiecePrice(1, second, 600));
        PriceList list = new PriceList(priced, List.of(), List.of(), List.of());
        // on lot 1 it pays 800; on lot 2 it would pay 1200, and each reel there may earn 200
        assertEquals("[400]", leaves(day, list, new Leaf(0)));
        ProofNode tree = new Branch(new Statement.SetOn("S", second), new Leaf(0), new Leaf(0));
        assertEquals("[800, 800]", leaves(day, list, tree));
        PriceList charged = new PriceList(priced, List.of(), List.of(new Touch("S", run("R2", 1), 100)), List.of());
        // on lot 2 it pays 100 less, which is what R2 earns less
        assertEquals("[800, 800]", leaves(day, charged, tree));
    }

    @Test
    void setThatFitsNowhereElse_liesWhereThereIsRoom() {
        Sketch day = new Sketch()
                .with(reel("R1", 700).lot("1"))
                .with(reel("R2", 900).lot("2"))
                .with(piece("a", 390).set("S", Bond.ONE_LOT))
                .with(piece("b", 390).set("S", Bond.ONE_LOT));
        ProofNode tree =
                new Branch(new Statement.SetOn("S", new Holder.Lot(Sketch.ROPE, "1")), ProofNode.EMPTY, new Leaf(0));
        assertEquals("[-, 800]", leaves(day, prices(400, 400), tree));
    }

    @Test
    void reelsThatAreAlike_areLoadedInOrder() {
        Sketch day = new Sketch()
                .with(reel("R1", 500))
                .with(reel("R2", 500))
                .with(piece("a", 290))
                .with(piece("b", 290));
        ProofNode idle = new Branch(load("R1", 1, 0), ProofNode.EMPTY, new Leaf(0));
        assertEquals("[-, 600]", leaves(day, prices(300, 300), idle));
        ProofNode used = new Branch(new Statement.ReelUsed("R2"), new Leaf(0), new Leaf(0));
        // each reel loses 50 when it must be used; the second is not used without the first
        assertEquals("[600, 500]", leaves(day, prices(250, 250), used));
    }

    @Test
    void copiesOfALine_areCountedOnTheRun() {
        Sketch day = new Sketch()
                .with(reel("R1", 1_000))
                .with(reel("R2", 600))
                .with(piece("a", 190))
                .with(piece("b", 190))
                .with(piece("c", 190));
        List<ProofTree.Line> one = List.of(new ProofTree.Line(List.of("a", "b", "c")));
        PriceList list = new PriceList(rack(300), List.of(), List.of(), List.of());
        ProofNode tree = new Branch(new Statement.CopiesAtMost(0, run("R1", 1), 1), new Leaf(0), new Leaf(0));
        // three pay 900; R1 earns 100 a piece, one at most or three, R2 three
        assertEquals("[500, 300]", leaves(day, one, list, tree));
    }

    @Test
    void undone_isPaidForByWeightUpToWhatMayBe() {
        PackingProblem day = new Sketch()
                .with(reel("R1", 300))
                .with(piece("a", 290))
                .with(piece("b", 290))
                .problem();
        List<ProofTree.Line> one = List.of(new ProofTree.Line(List.of("a", "b")));
        long weight = new UndoneWork(day).weight(day.pieces().get(0));
        int urgency = new UndoneWork(day).classOf(day.pieces().get(0));
        List<Long> undone = new ArrayList<>(java.util.Collections.nCopies(5, 0L));
        undone.set(urgency - 1, weight);
        PriceList list = new PriceList(rack(1_000), List.of(), List.of(), java.util.Collections.nCopies(5, 10L));
        ProofTree tree = ProofTree.of(one, 1, list);
        ProofGoal goal = new ProofGoal(0, 1, undone);
        // at most one piece is left: one pays 1000, one its weight at 10 and no more than that weight is taken off
        // again
        long expected = 1_000 + 10 * weight - 10 * weight - 700;
        assertEquals(
                List.of(Optional.of(BigInteger.valueOf(expected))),
                RandomProof.check(day, tree, goal).leaves());
    }

    @Test
    void leastUndone_isProvenWithoutMoney() {
        PackingProblem day = new Sketch()
                .prices(prices(SPLIT, HANDLING))
                .with(reel("R1", 300))
                .with(piece("a", 290))
                .with(piece("b", 290))
                .problem();
        long weight = new UndoneWork(day).weight(day.pieces().get(0));
        int urgency = new UndoneWork(day).classOf(day.pieces().get(0));
        PriceList list = new PriceList(rack(10 * weight), List.of(), List.of(), List.of());
        ProofTree tree = ProofTree.of(List.of(new ProofTree.Line(List.of("a", "b"))), 10, list);
        ProofGoal goal = new ProofGoal(urgency, 10, java.util.Collections.nCopies(urgency - 1, 0L));
        assertEquals(
                Optional.of(BigInteger.valueOf(weight)),
                RandomProof.check(day, tree, goal).proven());
    }

    @Test
    void whatIsNotThere_isRefused() {
        Sketch day = new Sketch().with(reel("R", 1_000)).with(piece("a", 290)).with(piece("b", 590));
        PriceList list = prices(300, 400);
        List<ProofNode> wrong = List.of(
                new Leaf(1),
                new Branch(load("R9", 1, 5), new Leaf(0), new Leaf(0)),
                new Branch(load("R", 2, 5), new Leaf(0), new Leaf(0)),
                new Branch(new Statement.UndoneAtMost(7, 0), new Leaf(0), new Leaf(0)),
                new Branch(new Statement.SetOn("S", new Holder.OneReel("R")), new Leaf(0), new Leaf(0)),
                new Branch(new Statement.OrderTakes("Z", new Holder.OneReel("R")), new Leaf(0), new Leaf(0)),
                new Branch(new Statement.OrderTakes("A", Holder.RACK), new Leaf(0), new Leaf(0)),
                new Branch(load("R", 1, 500), new Leaf(0), ProofNode.EMPTY));
        for (ProofNode tree : wrong) {
            assertThrows(ProofRefused.class, () -> leaves(day, list, tree), tree.toString());
        }
        PriceList twice = new PriceList(
                List.of(new PiecePrice(0, Holder.RACK, 1), new PiecePrice(0, Holder.RACK, 1)),
                List.of(),
                List.of(),
                List.of());
        assertThrows(ProofRefused.class, () -> leaves(day, twice, new Leaf(0)));
        PriceList nobody = new PriceList(rack(1), List.of(new Touch("Z", run("R", 1), 1)), List.of(), List.of());
        assertThrows(ProofRefused.class, () -> leaves(day, nobody, new Leaf(0)));
        List<ProofTree.Line> unlike = List.of(new ProofTree.Line(List.of("a", "b")));
        assertThrows(ProofRefused.class, () -> leaves(day, unlike, prices(1), new Leaf(0)));
        List<ProofTree.Line> again = List.of(new ProofTree.Line(List.of("a")), new ProofTree.Line(List.of("a")));
        assertThrows(ProofRefused.class, () -> leaves(day, again, prices(1), new Leaf(0)));
    }

    @Test
    void setOnPartOfItsLot_isRefused() {
        Sketch day = new Sketch()
                .with(reel("R1", 900).lot("1"))
                .with(reel("R2", 500).lot("1"))
                .with(piece("a", 390).set("S", Bond.ONE_LOT))
                .with(piece("b", 390).set("S", Bond.ONE_LOT));
        ProofNode tree = new Branch(new Statement.SetOn("S", new Holder.OneReel("R1")), new Leaf(0), new Leaf(0));
        ProofRefused refused = assertThrows(ProofRefused.class, () -> leaves(day, prices(400, 400), tree));
        assertTrue(String.valueOf(refused.getMessage()).contains("partly"), refused::toString);
    }

    private static Prices prices(Cost split, Cost handling) {
        return new Prices(Cost.ZERO, Cost.ZERO, handling, split, Cost.ZERO, Cost.ZERO);
    }

    private static List<PiecePrice> rack(long... each) {
        List<PiecePrice> prices = new ArrayList<>();
        for (int line = 0; line < each.length; line++) {
            prices.add(new PiecePrice(line, Holder.RACK, each[line]));
        }
        return prices;
    }

    private static PriceList prices(long... each) {
        return new PriceList(rack(each), List.of(), List.of(), List.of());
    }

    private static RunOfReel run(String reel, int run) {
        return new RunOfReel(reel, run);
    }

    private static Statement load(String reel, int run, long mm) {
        return new Statement.LoadAtMost(run(reel, run), mm);
    }

    private static String leaves(Sketch day, PriceList prices, ProofNode root) {
        List<ProofTree.Line> lines = day.problem().pieces().stream()
                .map(piece -> new ProofTree.Line(List.of(piece.id())))
                .toList();
        return leaves(day, lines, prices, root);
    }

    private static String leaves(Sketch day, List<ProofTree.Line> lines, PriceList prices, ProofNode root) {
        ProofTree tree = new ProofTree(lines, 1, List.of(prices), root);
        ProofGoal goal = new ProofGoal(0, 1, java.util.Collections.nCopies(5, 0L));
        return RandomProof.check(day.problem(), tree, goal).leaves().stream()
                .map(leaf -> leaf.map(BigInteger::toString).orElse("-"))
                .toList()
                .toString();
    }
}
