package bitterend.quoting;

import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.quoting.sharing.NewRope;
import java.util.Map;

/** The prices of lines once their ropes are quoted. */
final class LinePrices {
    private final QuotePolicy policy;
    private final QuoteBasis basis;

    LinePrices(QuotePolicy policy, QuoteBasis basis) {
        this.policy = policy;
        this.basis = basis;
    }

    /** The price of a line; a customer's own rope costs nothing. */
    LineQuote of(QuoteLine line, Map<String, RopeQuote> ropes) {
        RopeQuote rope = ropes.get(line.rope());
        if (line.ownRope() || rope == null) {
            return new LineQuote(
                    line, Length.ZERO, Money.ZERO, LinePrice.of(policy, line, Money.ZERO, Money.ZERO, Money.ZERO));
        }
        NewRope bought = basis.newRope(line.rope());
        Length sample = line.assembly().make().extras().sample().roundedUp();
        return new LineQuote(
                line,
                rope.drawnFor(line.name()),
                rope.shares().coins().get(rope.lines().indexOf(line.name())),
                LinePrice.of(
                        policy,
                        line,
                        bought.rope().price().of(line.cut()).rounded(),
                        bought.rope().price().of(sample).rounded(),
                        rope.paidBy(line.name())));
    }
}
