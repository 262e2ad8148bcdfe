package bitterend.quoting;

import bitterend.measure.Money;
import bitterend.quoting.BuildUp.Item;
import bitterend.quoting.BuildUp.Kind;
import java.util.ArrayList;
import java.util.List;

/** Builds the price of one line item by item. */
final class LinePrice {
    private final QuotePolicy policy;
    private final List<Item> items = new ArrayList<>();
    private Money sum = Money.ZERO;

    /**
     * What a line pays for its rope.
     *
     * @param share for rope, waste and reel handling together
     * @param freight its part of what suppliers charge by order
     */
    record Paid(Money share, Money freight) {
        static final Paid NOTHING = new Paid(Money.ZERO, Money.ZERO);
    }

    private LinePrice(QuotePolicy policy) {
        this.policy = policy;
    }

    /**
     * The price of a line.
     *
     * @param rope the rope in its pieces, samples included
     * @param sample of that, the rope of its samples
     * @param paid what it pays for rope, waste and reel handling together, and for the way of the rope
     */
    static BuildUp of(QuotePolicy policy, QuoteLine line, Money rope, Money sample, Paid paid) {
        LinePrice price = new LinePrice(policy);
        price.add(Kind.ROPE, rope.minus(sample));
        price.add(Kind.WASTE, paid.share().minus(rope));
        price.add(Kind.FREIGHT, paid.freight());
        price.work(line, sample);
        return price.finish(line.quantity());
    }

    private void work(QuoteLine line, Money sample) {
        int quantity = line.quantity();
        QuotePolicy.Work work = policy.work();
        add(Kind.HARDWARE, line.hardware(policy.parts()));
        add(Kind.LABOUR, Amounts.labour(work.labour(), (long) line.minutes() * quantity));
        Money atRisk = sum;
        add(Kind.SETTING_UP, Amounts.labour(work.labour(), work.setUpMinutes()));
        add(Kind.SAMPLES, sample.plus(line.asked().test()));
        add(Kind.SPOILAGE, Amounts.share(atRisk, work.spoilage()));
        add(Kind.PACKING, work.packing().times(quantity));
    }

    private BuildUp finish(int quantity) {
        QuotePolicy.Surcharges surcharges = policy.surcharges();
        add(Kind.OVERHEAD, Amounts.share(sum, surcharges.overhead()));
        add(Kind.MARGIN, Amounts.priceWith(sum, surcharges.margin()).minus(sum));
        if (sum.compareTo(surcharges.minimum()) < 0) {
            add(Kind.MINIMUM, surcharges.minimum().minus(sum));
        }
        Money each = new Money(-Math.floorDiv(-sum.minor(), (long) quantity));
        add(Kind.ROUNDING, each.times(quantity).minus(sum));
        return new BuildUp(items, each, quantity);
    }

    private void add(Kind kind, Money amount) {
        sum = sum.plus(amount);
        if (!amount.equals(Money.ZERO)) {
            items.add(new Item(kind, amount));
        }
    }
}
