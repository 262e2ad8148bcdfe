package bitterend.packing.patterns.fewest;

import bitterend.packing.proof.FewestProof;
import bitterend.packing.proof.FewestProof.Branch;
import bitterend.packing.proof.FewestProof.Empty;
import bitterend.packing.proof.FewestProof.Leaf;
import bitterend.packing.proof.FewestProof.Line;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Writes down a search that came to its end without a plan. */
final class DenialWriter {
    private DenialWriter() {}

    static FewestProof of(ReelQuestion question, Node root) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < question.items(); i++) {
            lines.add(new Line(question.size[i], question.count[i]));
        }
        return new FewestProof(lines, question.reels, node(root));
    }

    private static FewestProof.Node node(Node node) {
        Decision decision = node.decision;
        Node yes = node.yes;
        Node no = node.no;
        if (decision != null && yes != null && no != null) {
            return new Branch(decision.leader(), decision.item(), decision.copies(), node(yes), node(no));
        }
        int[] prices = node.prices;
        return prices == null
                ? new Empty()
                : new Leaf(Arrays.stream(prices).asLongStream().boxed().toList());
    }
}
