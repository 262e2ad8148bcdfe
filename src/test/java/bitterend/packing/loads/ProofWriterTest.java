package bitterend.packing.loads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.PackingProblem;
import bitterend.packing.proof.ProofNode;
import bitterend.packing.proof.ProofTree;
import org.junit.jupiter.api.Test;

final class ProofWriterTest {
    private static final int DEEP = 2 * ProofTree.DEEPEST;

    @Test
    void proof_isNoDeeperThanFilesKeep() {
        PackingProblem day = TightDay.of(0, 7);
        LoadModel model = LoadModelBuilder.of(day, false).orElseThrow();
        Node root = new Node(new Domain(model, model.everything()), 0, 0, Duals.none(model));
        Node deepest = root;
        for (int depth = 0; depth < DEEP; depth++) {
            Decision cut = new Decision.LoadAtMost(0, depth);
            deepest.decision = cut;
            deepest.yes = new Node(deepest.domain.copy(), depth + 1, 1_000_000, deepest.duals);
            deepest.no = new Node(deepest.domain.copy(), depth + 1, depth, deepest.duals);
            deepest = deepest.no;
        }
        ProofWriter writer = new ProofWriter(model, Item.NONE, root, Integer.MAX_VALUE);
        ProofTree written = writer.proof(root);
        assertEquals(ProofTree.DEEPEST, depth(written.root()));
        assertTrue(writer.proven() < DEEP, "what the deeper nodes prove is not claimed");
    }

    private static int depth(ProofNode node) {
        return node instanceof ProofNode.Branch branch ? 1 + Math.max(depth(branch.yes()), depth(branch.no())) : 0;
    }
}
