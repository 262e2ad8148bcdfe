package bitterend.quoting;

import bitterend.market.Bill;
import bitterend.measure.Coins;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Money;
import java.math.BigInteger;
import java.util.List;
import org.apache.commons.math3.fraction.BigFraction;

/**
 * What the lines of a request pay of freight: of a reel a line pays for the rope that is drawn for it, and the rest stays with
 * the rope that goes back to the rack. For what suppliers charge by order, an order of all reels that the request takes is made
 * of each supplier; its freight falls on the reels by what is paid for them.
 */
final class LineFreight {
    private final Bill bill;
    private final RopeQuote rope;
    private final Length reels;

    /** @param bill of all reels that the request takes */
    LineFreight(Bill bill, RopeQuote rope) {
        this.bill = bill;
        this.rope = rope;
        reels = rope.buying().sizes().stream()
                .map(size -> size.offer().usable().times(size.reels()))
                .reduce(Length.ZERO, Length::plus);
    }

    /** What a line pays of the freight by order, rounded to the smallest coin. */
    Money byOrder(Length drawn) {
        return share(bill.orders().stream().map(this::onRope).reduce(BigFraction.ZERO, BigFraction::add), drawn);
    }

    /**
     * What is in the rope of a line of the freight by reel and by weight, rounded to the smallest coin.
     *
     * @param pieces rope in its pieces, samples left out
     * @param drawn rope drawn for it, samples left out
     */
    FreightWithin byReel(Length pieces, Length drawn) {
        Cost freight = rope.buying().sizes().stream()
                .map(size -> size.freight().times(size.reels()))
                .reduce(Cost.ZERO, Cost::plus);
        BigFraction coins =
                new BigFraction(BigInteger.valueOf(freight.millis()), BigInteger.valueOf(Cost.MILLIS_PER_MINOR));
        Money inPieces = share(coins, pieces);
        return new FreightWithin(inPieces, share(coins, drawn).minus(inPieces));
    }

    private Money share(BigFraction freight, Length drawn) {
        if (!reels.isPositive() || freight.equals(BigFraction.ZERO)) {
            return Money.ZERO;
        }
        return new Money(Coins.nearest(
                freight.multiply(new BigFraction(BigInteger.valueOf(drawn.mm()), BigInteger.valueOf(reels.mm())))));
    }

    private BigFraction onRope(Bill.Order order) {
        List<Bill.Line> ofSupplier = bill.lines().stream()
                .filter(line -> line.offer().supplier().equals(order.supplier().name()))
                .toList();
        Money goods = ofSupplier.stream()
                .filter(line -> line.offer().rope().equals(rope.rope()))
                .map(Bill.Line::goods)
                .reduce(Money.ZERO, Money::plus);
        return order.goods().equals(Money.ZERO)
                ? BigFraction.ZERO
                : new BigFraction(
                                BigInteger.valueOf(goods.minor()),
                                BigInteger.valueOf(order.goods().minor()))
                        .multiply(BigInteger.valueOf(order.freight().byOrder().minor()));
    }
}
