package bitterend.quoting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.market.ReelPrice;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.UnitPrice;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What rope would have cost a job: an offer whose minimum it does not reach is none of its prices. */
final class PriceInReachTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private static Offer offer(String id, long price, int minimum) {
        return new Offer(
                id,
                "",
                "A",
                Offer.Made.plain(new Length(100_000)),
                new Offer.Terms(
                        ReelPrice.of(new Money(price)),
                        Money.ZERO,
                        Offer.Terms.UNLIMITED,
                        minimum,
                        Offer.Lead.AT_ONCE,
                        LocalDate.MAX));
    }

    private static Optional<PriceInReach> price(int pieces, Offer... offers) {
        return PriceInReach.of(
                new Market(DAY, List.of(offers), List.of(), Map.of()),
                "A",
                Collections.nCopies(pieces, new Length(30_000)));
    }

    @Test
    void cheapestOffer_isNone_whereItsMinimumIsOutOfReach() {
        Offer single = offer("single", 20_000, 1);
        Offer five = offer("five", 10_000, 5);
        assertEquals(
                Optional.of(new PriceInReach(new UnitPrice(200_000), new UnitPrice(200_000), true)),
                price(3, single, five));
        assertEquals(
                Optional.of(new PriceInReach(new UnitPrice(100_000), new UnitPrice(100_000), true)),
                price(14, single, five),
                "420 m need five reels");
        assertEquals(
                Optional.of(new PriceInReach(new UnitPrice(100_000), new UnitPrice(100_000), false)), price(3, five));
        assertEquals(Optional.empty(), price(3));
    }
}
