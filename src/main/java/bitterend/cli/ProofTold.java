package bitterend.cli;

import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.check.BoundChecker;
import bitterend.packing.check.BoundVerdict;
import bitterend.report.FindingsPage;
import java.util.List;

/** Tells what the checker made of the bounds of a plan: how many are confirmed whole, and each of which a part is not. */
final class ProofTold {
    private ProofTold() {}

    static void tell(Terminal terminal, PackingProblem problem, CutPlan plan) {
        List<String> sentences = BoundChecker.check(problem, plan).stream()
                .map(BoundVerdict::sentence)
                .toList();
        List<String> open = sentences.stream()
                .filter(sentence -> !sentence.endsWith(BoundVerdict.CONFIRMED_WHOLE))
                .toList();
        int whole = sentences.size() - open.size();
        if (!sentences.isEmpty()) {
            terminal.err().println("proof, computed again:");
        }
        if (whole > 0) {
            terminal.err().println("  " + FindingsPage.count(whole, "bound") + " confirmed");
        }
        open.forEach(sentence -> terminal.err().println("  " + sentence));
    }
}
