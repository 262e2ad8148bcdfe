package bitterend.packing.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.bench.HardProblems;
import bitterend.bench.Instance;
import bitterend.packing.patterns.Effort;
import bitterend.packing.patterns.PatternPacker;
import bitterend.packing.patterns.PatternPlan;
import bitterend.packing.patterns.ReelKind;
import bitterend.packing.proof.FewestProof;
import bitterend.packing.proof.FewestProof.Branch;
import bitterend.packing.proof.FewestProof.Empty;
import bitterend.packing.proof.FewestProof.Leaf;
import bitterend.packing.proof.FewestProof.Line;
import bitterend.packing.proof.FewestProof.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Proofs that so many reels are too few: what is sound is confirmed, what was changed is refused. */
final class FewestCheckTest {
    private static FewestProof proof = new FewestProof(List.of(), 0, new Leaf(List.of()));
    private static final Map<Long, Integer> PIECES = new TreeMap<>();
    private static long room;

    @BeforeAll
    static void proofOfAHardProblem() {
        for (int seed = 0; PIECES.isEmpty(); seed++) {
            Instance instance = Instance.of(HardProblems.drawn(HardProblems.Kind.GAP, 60, 5000, seed));
            PatternPlan plan = PatternPacker.pack(instance.problem(), Effort.ofWork(2_000_000_000L));
            Optional<FewestProof> found = plan.denial().filter(denial -> denial.root() instanceof Branch);
            if (found.isPresent()) {
                proof = found.get();
                ReelKind reel = instance.problem().reels().get(0);
                room = reel.runs().get(0).length();
                for (int i = 0; i < reel.lengths().size(); i++) {
                    PIECES.put(
                            reel.lengths().get(i),
                            instance.problem().items().get(i).demand());
                }
            }
        }
    }

    private static String fault(Node root) {
        return FewestCheck.fault(new FewestProof(proof.lines(), proof.reels(), root), room, PIECES, proof.reels());
    }

    private static Node eachLeaf(Node node, UnaryOperator<Node> change) {
        return node instanceof Branch branch
                ? new Branch(
                        branch.leader(),
                        branch.line(),
                        branch.copies(),
                        eachLeaf(branch.yes(), change),
                        eachLeaf(branch.no(), change))
                : change.apply(node);
    }

    @Test
    void aSoundProof_isConfirmed() {
        assertEquals("", fault(proof.root()));
    }

    @Test
    void aChangedPrice_isRefused() {
        Node cheaper = eachLeaf(proof.root(), node -> {
            if (!(node instanceof Leaf leaf)) {
                return node;
            }
            List<Long> prices = new ArrayList<>(leaf.prices());
            prices.set(0, prices.get(0) - prices.get(0) / 3 - 1_000_000);
            return new Leaf(prices);
        });
        assertFalse(fault(cheaper).isEmpty());
        Node dearer = eachLeaf(proof.root(), node -> {
            if (!(node instanceof Leaf leaf)) {
                return node;
            }
            List<Long> prices = new ArrayList<>(leaf.prices());
            prices.set(0, 2 * prices.get(0) + 1_000_000);
            return new Leaf(prices);
        });
        assertFalse(fault(dearer).isEmpty());
    }

    @Test
    void aChangedBranch_isRefused() {
        Branch root = (Branch) proof.root();
        assertFalse(fault(new Branch(root.leader(), root.line(), root.copies(), root.no(), root.yes()))
                .isEmpty());
        int other = root.line() + 1 < proof.lines().size() ? root.line() + 1 : root.line() - 1;
        assertFalse(fault(new Branch(root.leader(), other, root.copies(), root.yes(), root.no()))
                .isEmpty());
        assertFalse(fault(root.yes()).isEmpty());
        assertFalse(fault(root.no()).isEmpty());
        assertTrue(fault(new Branch(root.line(), root.leader(), 1, root.yes(), root.no()))
                .startsWith("a question"));
        assertTrue(fault(new Branch(root.leader(), root.line(), 0, root.yes(), root.no()))
                .startsWith("a question"));
        assertTrue(fault(new Branch(-1, root.line(), 1, root.yes(), root.no())).startsWith("a question"));
    }

    /** Whichever case is passed over, however deep: it may be the one in which a plan is left. */
    @Test
    void aCaseThatProvesNothing_isRefusedWhereverItLies() {
        int all = leaves(proof.root());
        assertTrue(all > 1, "leaves: " + all);
        for (int which = 0; which < all; which++) {
            int[] at = {which};
            Node hollow = eachLeaf(
                    proof.root(),
                    node -> at[0]-- == 0
                            ? new Leaf(
                                    java.util.Collections.nCopies(proof.lines().size(), 0L))
                            : node);
            assertFalse(fault(hollow).isEmpty(), "leaf " + which + " of " + all);
        }
    }

    private static int leaves(Node node) {
        return node instanceof Branch branch ? leaves(branch.yes()) + leaves(branch.no()) : 1;
    }

    @Test
    void aReelMore_isRefused() {
        FewestProof more = new FewestProof(proof.lines(), proof.reels() + 1, proof.root());
        assertFalse(FewestCheck.fault(more, room, PIECES, proof.reels() + 1).isEmpty());
        assertTrue(FewestCheck.fault(proof, room, PIECES, proof.reels() + 1).startsWith("the proof speaks of"));
    }

    @Test
    void aCaseThatIsCalledEmptyAndIsNot_isRefused() {
        assertTrue(fault(new Empty()).contains("empty"));
        assertTrue(fault(eachLeaf(proof.root(), node -> new Empty())).contains("empty"));
    }

    @Test
    void otherPieces_orAShorterRoom_areRefused() {
        Map<Long, Integer> fewer = new TreeMap<>(PIECES);
        fewer.remove(fewer.keySet().iterator().next());
        assertEquals("the proof speaks of other pieces", FewestCheck.fault(proof, room, fewer, proof.reels()));
        assertFalse(FewestCheck.fault(proof, room + 1, PIECES, proof.reels()).isEmpty());
        assertEquals("nothing is asked", FewestCheck.fault(proof, room, PIECES, 0));
        List<Line> turned = new ArrayList<>(proof.lines());
        java.util.Collections.reverse(turned);
        FewestProof upsideDown = new FewestProof(turned, proof.reels(), proof.root());
        assertTrue(FewestCheck.fault(upsideDown, room, PIECES, proof.reels()).contains("longer than the one before"));
    }

    @Test
    void aLeafThatLacksAPrice_orHasOneTooLarge_isRefused() {
        Node shorter = eachLeaf(proof.root(), node -> new Leaf(List.of(1L)));
        assertTrue(fault(shorter).contains("prices for"));
        Node large = eachLeaf(
                proof.root(),
                node -> new Leaf(java.util.Collections.nCopies(proof.lines().size(), Long.MAX_VALUE)));
        assertTrue(fault(large).contains("too large"));
    }

    @Test
    void leadersThatMustHoldMoreThanThereIs_leaveNoPlan_andIsEmpty() {
        List<Line> lines = List.of(new Line(6, 1), new Line(5, 1), new Line(3, 1));
        Map<Long, Integer> three = new TreeMap<>(Map.of(6L, 1, 5L, 1, 3L, 1));
        Node both = new Branch(0, 2, 1, new Branch(1, 2, 1, new Empty(), leaf(2, 1, 1)), leaf(1, 1, 1));
        String fault = FewestCheck.fault(new FewestProof(lines, 1, both), 10, three, 1);
        assertFalse(fault.contains("empty"), fault);
    }

    private static Leaf leaf(long... prices) {
        return new Leaf(java.util.Arrays.stream(prices).boxed().toList());
    }
}
