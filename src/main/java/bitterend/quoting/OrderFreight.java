package bitterend.quoting;

import bitterend.market.Bill;
import bitterend.measure.Length;
import bitterend.measure.Money;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.math3.fraction.BigFraction;

/**
 * What the lines of a request pay of the freight that suppliers charge by order. An order of all reels that the request takes
 * is made of each supplier; its freight falls on the reels by what is paid for them, and of a reel a line pays for the rope
 * that is drawn for it. The rest stays with the rope that goes back to the rack.
 */
final class OrderFreight {
    private final Bill bill;

    OrderFreight(Bill bill) {
        this.bill = bill;
    }

    /** What a line pays, rounded to the smallest coin. */
    Money of(RopeQuote rope, Length drawn) {
        Length reels = rope.buying().sizes().stream()
                .map(size -> size.offer().usable().times(size.reels()))
                .reduce(Length.ZERO, Length::plus);
        BigFraction freight = bill.orders().stream()
                .map(order -> onRope(order, rope.rope()))
                .reduce(BigFraction.ZERO, BigFraction::add);
        if (!reels.isPositive() || freight.equals(BigFraction.ZERO)) {
            return Money.ZERO;
        }
        BigFraction share =
                freight.multiply(new BigFraction(BigInteger.valueOf(drawn.mm()), BigInteger.valueOf(reels.mm())));
        return new Money(new BigDecimal(share.getNumerator())
                .divide(new BigDecimal(share.getDenominator()), 0, RoundingMode.HALF_UP)
                .longValueExact());
    }

    private BigFraction onRope(Bill.Order order, String rope) {
        List<Bill.Line> ofSupplier = bill.lines().stream()
                .filter(line -> line.offer().supplier().equals(order.supplier().name()))
                .toList();
        Money goods = ofSupplier.stream()
                .filter(line -> line.offer().rope().equals(rope))
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
