package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.market.Supplier;
import bitterend.measure.Cost;
import bitterend.measure.MassPrice;
import bitterend.measure.Money;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the freight of a reel is charged with in a bound: by its mass, unless its order may come freight paid. */
final class FreightTest {
    /** A kilogram for a coin. */
    private static final MassPrice BY_MASS = new MassPrice(Cost.MILLIS_PER_MINOR, 1_000_000_000L);

    private static Market market(Money freeFrom) {
        Supplier works = new Supplier(
                "Works", "", "", new Supplier.Freight(Money.ZERO, BY_MASS, freeFrom), Money.ZERO, null, "");
        return Stall.market(List.of(offer()), List.of(works));
    }

    private static Offer offer() {
        return Stall.sold("O", "Works", 100, 50);
    }

    /** 100 m of 110 g a metre are 11 kg; a thousandth of the bill of a thousand reels is never more than that of one. */
    @Test
    void freightByMass_isThatOfOneOfMany_roundedDown() {
        assertEquals(new Cost(10_999), Freight.CHARGED.of(market(Supplier.Freight.NEVER), offer()));
        assertEquals(new Cost(10_999), Freight.CHARGED.of(market(new Money(500)), offer()), "charged all the same");
    }

    @Test
    void freightThatMayBePaid_isNothing() {
        assertEquals(Cost.ZERO, Freight.PAID_BY_SUPPLIER.of(market(new Money(500)), offer()));
        assertEquals(new Cost(10_999), Freight.PAID_BY_SUPPLIER.of(market(Supplier.Freight.NEVER), offer()));
        assertTrue(Freight.mayBeFree(market(new Money(500)), offer()));
        assertFalse(Freight.mayBeFree(market(Supplier.Freight.NEVER), offer()));
    }
}
