package bitterend.demand;

import bitterend.finding.Finding;
import bitterend.measure.FineLength;
import java.util.List;

/**
 * The take-up that a finished assembly shows: what it was cut longer than everything else accounts for.
 *
 * @param termination id of the termination that took it up; empty when the findings say why it is not known
 * @param ends how many ends took it up together, 1 or 2; of two alike only the sum can be told
 * @param end the end as ordered; the first of two alike
 * @param together the take-up of those ends; negative when the assembly came out longer than it was cut for
 * @param band half the width of the band in which it was expected, 95 times in 100; zero where nobody says
 * @param findings why it cannot be told
 */
public record TakeUp(
        String termination, int ends, EndSpec end, FineLength together, FineLength band, List<Finding> findings) {
    public TakeUp {
        findings = List.copyOf(findings);
    }

    static TakeUp unknown(List<Finding> findings) {
        return new TakeUp("", 0, EndSpec.of("plain"), FineLength.ZERO, FineLength.ZERO, findings);
    }

    public boolean isKnown() {
        return ends > 0;
    }
}
