package bitterend.demand;

import bitterend.measure.Sentence;
import java.util.List;

/**
 * The region's code that a leg for slings or lifting is made under.
 *
 * @param code its id; empty where none is stated, and of all codes the larger figure holds
 * @param asks what it asks of the leg, a line each with the code that the row is from and its source
 */
public record CodeInForce(String code, List<Sentence> asks) {
    public CodeInForce {
        asks = List.copyOf(asks);
    }

    /** {@code en}, or that none is stated. */
    public String words() {
        return code.isEmpty() ? "none stated: of all codes the larger figure holds" : code;
    }
}
