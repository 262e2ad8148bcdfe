package bitterend.market;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.market.Bill.Objection;
import bitterend.market.LeftOut.Why;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Mass;
import bitterend.measure.MassPrice;
import bitterend.measure.Money;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What can be had on a day, and what an order of it comes to. Ropes, prices and suppliers are invented. */
final class MarketTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final String ROPE = "B12";

    @Test
    void anOffer_standsUntilItsLastDayAndNoLonger() {
        Offer offer = offer("a", terms(10_000, 5, 1, DAY));
        assertEquals(List.of(offer), market(DAY, offer).offered());
        assertEquals(List.of(), market(DAY.plusDays(1), offer).offered());
        assertEquals(
                List.of(new LeftOut(offer, Why.NO_LONGER_VALID)),
                market(DAY.plusDays(1), offer).leftOut(ROPE));
    }

    @Test
    void whatCannotBeHad_isLeftOutWithItsReason() {
        Offer none = offer("none", terms(10_000, 0, 1, LocalDate.MAX));
        Offer few = offer("few", terms(10_000, 3, 4, LocalDate.MAX));
        Offer enough = offer("enough", terms(10_000, 4, 4, LocalDate.MAX));
        Offer joined = new Offer(
                "joined",
                "",
                ROPE,
                new Offer.Made(Written.worked(Length.ofMetres(500)), Ratio.ZERO, Reel.Known.METERED, true, "", false),
                Offer.Terms.of(new Money(1)));
        Market market = market(DAY, none, few, enough, joined);
        assertEquals(List.of(enough), market.offered());
        assertEquals(List.of(enough), market.offered(ROPE));
        assertEquals(List.of(), market.offered("other"));
        assertEquals(
                List.of(
                        new LeftOut(few, Why.SUPPLY_BELOW_MINIMUM),
                        new LeftOut(joined, Why.JOINED),
                        new LeftOut(none, Why.NOTHING_LEFT)),
                market.leftOut());
        assertEquals(few, market.offer("few"));
        assertThrows(IllegalArgumentException.class, () -> market.offer("other"));
    }

    @Test
    void aReel_hasThePriceOfTheLastBreakItsOrderReaches() {
        ReelPrice price =
                new ReelPrice(new Money(37_000), new TreeMap<>(Map.of(5, new Money(34_700), 10, new Money(33_000))));
        assertEquals(new Money(37_000), price.at(1));
        assertEquals(new Money(37_000), price.at(4));
        assertEquals(new Money(34_700), price.at(5));
        assertEquals(new Money(34_700), price.at(9));
        assertEquals(new Money(33_000), price.at(10));
        assertEquals(new Money(33_000), price.at(1_000));
        assertThrows(
                IllegalArgumentException.class,
                () -> new ReelPrice(new Money(10), new TreeMap<>(Map.of(2, new Money(10)))));
        assertThrows(
                IllegalArgumentException.class,
                () -> new ReelPrice(new Money(10), new TreeMap<>(Map.of(1, new Money(9)))));
    }

    @Test
    void aReelIsCountedOn_laterThanItsSupplierSays() {
        Offer.Terms terms = new Offer.Terms(
                ReelPrice.of(new Money(1)), Money.ZERO, Offer.Terms.UNLIMITED, 1, new Offer.Lead(7, 3), LocalDate.MAX);
        assertEquals(DAY.plusDays(7), offer("a", terms).arrives(DAY));
        assertEquals(DAY.plusDays(10), offer("a", terms).countedOn(DAY));
    }

    @Test
    void minimumAndSupply_forbidOneReelBeyondThem() {
        Market market = market(DAY, offer("a", terms(10_000, 6, 3, LocalDate.MAX)));
        Offer offer = market.offer("a");
        assertEquals(
                List.of(new Objection.BelowMinimum(offer, 2)),
                market.bill(Map.of("a", 2)).objections());
        assertTrue(market.bill(Map.of("a", 3)).isAllowed());
        assertTrue(market.bill(Map.of("a", 6)).isAllowed());
        assertEquals(
                List.of(new Objection.AboveSupply(offer, 7)),
                market.bill(Map.of("a", 7)).objections());
        assertTrue(market.bill(Map.of("a", 0)).lines().isEmpty());
        assertThrows(IllegalArgumentException.class, () -> market.bill(Map.of("a", -1)));
    }

    @Test
    void whatIsLeftOut_isForbiddenAndBilledAllTheSame() {
        Market market = market(DAY, offer("a", terms(10_000, 0, 1, LocalDate.MAX)));
        Bill bill = market.bill(Map.of("a", 2));
        assertEquals(
                List.of(new Objection.CannotBeHad(new LeftOut(market.offer("a"), Why.NOTHING_LEFT))),
                bill.objections());
        assertEquals(new Money(20_000), bill.sum());
    }

    /** 2 reels of 100 m at 0.1 kg/m are 20 kg: 20 x 0.455 EUR = 9.10 EUR; and 3 kg of another 30 m: 1.365, 1.37 EUR. */
    @Test
    void freight_isByReelByMassAndByOrder() {
        Supplier supplier = supplier("Northquay", 650, new MassPrice(45_500, 1_000_000_000), 100_000, 15_000);
        Offer offer = new Offer(
                "a",
                "Northquay",
                ROPE,
                Offer.Made.plain(Length.ofMetres(100)),
                new Offer.Terms(
                        ReelPrice.of(new Money(20_000)),
                        new Money(400),
                        Offer.Terms.UNLIMITED,
                        1,
                        Offer.Lead.AT_ONCE,
                        LocalDate.MAX));
        Market market = new Market(DAY, List.of(offer), List.of(supplier), Map.of(ROPE, new LinearMass(100_000)));
        Bill.Freight freight = market.bill(Map.of("a", 2)).orders().get(0).freight();
        assertEquals(
                new Bill.Freight(new Money(800), new Money(910), new Money(650), false, new Mass(20_000), List.of()),
                freight);
        assertEquals(new Money(42_360), market.bill(Map.of("a", 2)).sum());
        Bill.Freight one = market.bill(Map.of("a", 1)).orders().get(0).freight();
        assertEquals(new Money(455), one.byMass());
        assertEquals(new Money(137), supplier.freight().of(new Mass(3_000)));
        // Five reels come to 1000 EUR, from which freight is paid.
        Bill.Order free = market.bill(Map.of("a", 5)).orders().get(0);
        assertTrue(free.freight().free());
        assertEquals(new Money(100_000), free.sum());
        assertFalse(market.bill(Map.of("a", 4)).orders().get(0).freight().free());
    }

    @Test
    void anOrderBelowWhatItsSupplierSends_isForbidden() {
        Offer a = offer("a", "Northquay", 10_000);
        Offer b = offer("b", "Northquay", 6_000);
        Market market = new Market(
                DAY,
                List.of(a, b),
                List.of(supplier("Northquay", 0, MassPrice.NOTHING, Long.MAX_VALUE, 15_000)),
                Map.of());
        assertEquals(
                List.of(new Objection.BelowMinimumOrder(market.supplier("Northquay"), new Money(10_000))),
                market.bill(Map.of("a", 1)).objections());
        assertTrue(market.bill(Map.of("a", 1, "b", 1)).isAllowed());
    }

    @Test
    void ropeOfUnknownMass_isNamedAndChargedNothing() {
        Market market = new Market(
                DAY,
                List.of(offer("a", "Northquay", 10_000)),
                List.of(supplier("Northquay", 0, new MassPrice(1_000, 1_000), Long.MAX_VALUE, 0)),
                Map.of(ROPE, new LinearMass(0)));
        Bill.Freight freight = market.bill(Map.of("a", 1)).orders().get(0).freight();
        assertEquals(List.of(ROPE), freight.massUnknown());
        assertEquals(Money.ZERO, freight.sum());
    }

    @Test
    void aSupplierNobodyKnows_chargesNothingByOrder() {
        Market market = market(DAY, offer("a", "Northquay", 10_000));
        assertEquals(Supplier.named("Northquay"), market.supplier("Northquay"));
        assertEquals(new Money(10_000), market.bill(Map.of("a", 1)).sum());
        assertEquals(List.of(), market.suppliers());
    }

    static Supplier supplier(String name, long byOrder, MassPrice byMass, long freeFrom, long minimum) {
        return new Supplier(
                name,
                "",
                "",
                new Supplier.Freight(new Money(byOrder), byMass, new Money(freeFrom)),
                new Money(minimum),
                null,
                "");
    }

    private static Market market(LocalDate day, Offer... offers) {
        return new Market(day, List.of(offers), List.of(), Map.of());
    }

    private static Offer offer(String id, String supplier, long price) {
        return new Offer(id, supplier, ROPE, Offer.Made.plain(Length.ofMetres(100)), Offer.Terms.of(new Money(price)));
    }

    private static Offer offer(String id, Offer.Terms terms) {
        return new Offer(id, "", ROPE, Offer.Made.plain(Length.ofMetres(100)), terms);
    }

    private static Offer.Terms terms(long price, int supply, int minimum, LocalDate until) {
        return new Offer.Terms(ReelPrice.of(new Money(price)), Money.ZERO, supply, minimum, Offer.Lead.AT_ONCE, until);
    }
}
