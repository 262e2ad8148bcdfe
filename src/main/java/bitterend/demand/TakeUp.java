package bitterend.demand;

import bitterend.finding.Finding;
import bitterend.measure.FineLength;
import java.util.List;

/**
 * The take-up that a finished assembly shows: what it was cut longer than everything else accounts for.
 *
 * @param termination id of the termination that took it up; empty when the findings say why it is not known
 * @param ends how many ends took it up together, 1 or 2; of two alike only the sum can be told
 * @param together the take-up of those ends; negative when the assembly came out longer than it was cut for
 * @param findings why it cannot be told
 */
public record TakeUp(String termination, int ends, FineLength together, List<Finding> findings) {
    public TakeUp {
        findings = List.copyOf(findings);
    }

    static TakeUp unknown(List<Finding> findings) {
        return new TakeUp("", 0, FineLength.ZERO, findings);
    }

    public boolean isKnown() {
        return ends > 0;
    }
}
