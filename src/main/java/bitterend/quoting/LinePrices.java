package bitterend.quoting;

import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.UnitPrice;

/** The prices of lines once their ropes are quoted. */
final class LinePrices {
    private final QuotePolicy policy;

    LinePrices(QuotePolicy policy) {
        this.policy = policy;
    }

    /** The price of a line; a customer's own rope costs nothing. */
    LineQuote of(QuoteLine line, RopePrices.Priced priced) {
        RopeQuote rope = priced.ropes().get(line.rope());
        if (line.ownRope() || rope == null) {
            return new LineQuote(
                    line,
                    Length.ZERO,
                    FreightWithin.NONE,
                    Money.ZERO,
                    LinePrice.of(policy, line, Money.ZERO, Money.ZERO, LinePrice.Paid.NOTHING));
        }
        UnitPrice price = rope.price();
        Length drawn = rope.drawnFor(line.name());
        Length sample = line.sample();
        LineFreight freight = new LineFreight(priced.bill(), rope);
        return new LineQuote(
                line,
                drawn,
                freight.byReel(line.cut().minus(sample), drawn.minus(sample)),
                rope.shares().coins().get(rope.lines().indexOf(line.name())),
                LinePrice.of(
                        policy,
                        line,
                        rope.inPiecesOf(line.name()),
                        price.of(sample).rounded(),
                        new LinePrice.Paid(rope.paidBy(line.name()), freight.byOrder(drawn))));
    }
}
