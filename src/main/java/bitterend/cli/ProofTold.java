package bitterend.cli;

import bitterend.packing.check.BoundVerdict;
import bitterend.packing.strategy.DayPlanner;
import bitterend.report.FindingsPage;
import java.util.List;

/**
 * Tells what the checker made of a plan: how many bounds are confirmed whole, each of which a part is not, and plans that
 * were thrown away because this program made them wrong.
 */
final class ProofTold {
    private ProofTold() {}

    static void tell(Terminal terminal, DayPlanner.Checked checked) {
        unsound(terminal, checked.unsound());
        List<String> sentences =
                checked.bounds().stream().map(BoundVerdict::sentence).toList();
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

    private static void unsound(Terminal terminal, List<String> faults) {
        if (!faults.isEmpty()) {
            terminal.err()
                    .println("fault of this program: a plan that breaks a rule was made and thrown away. The plan below"
                            + " passed every check. Please send us the shop folder as it is, with this:");
            faults.forEach(fault -> terminal.err().println("  " + fault));
        }
    }
}
