package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.market.Offer;
import bitterend.market.Supplier;
import bitterend.measure.Length;
import bitterend.measure.MassPrice;
import bitterend.measure.Money;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.measure.Written;
import bitterend.packing.Effort;
import bitterend.packing.strategy.FullStrategy;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** How far the shop may go: a budget, and the most weeks that rope may last. */
final class SpendingTest {
    private static final long EURO = 100;

    /** 3.10 EUR a metre. */
    private static final StockValue DEAR = length -> new UnitPrice(310_000).of(length);

    /** Two orders of a reel of 100 each: with money for one, the urgent one is served and the other has no rope. */
    @Test
    void budget_servesTheUrgentOrdersAndNamesTheOthers() {
        List<Piece> pieces = List.of(
                Stall.piece("LATER", "1.1", 90, Stall.DAY.plusDays(60)),
                Stall.piece("URGENT", "1.1", 90, Stall.DAY.plusDays(2)));
        Orders orders = Stall.orders(pieces, List.of(Stall.offer("big", 100, 80)));
        Advice advice = spending(orders, new Spending(new Money(100), Spending.FOREVER), Map.of());
        assertTrue(advice.findRecommended().isEmpty());
        assertEquals(new Money(60).fine(), advice.ways().get(0).overBudget());
        assertEquals(List.of("LATER/1.1"), advice.unpaid());
        assertEquals(1, advice.act().set().of("big"));
        assertEquals(List.of("URGENT/1.1"), advice.act().lines().get(0).need().without());
        Advice enough = spending(orders, new Spending(new Money(160), Spending.FOREVER), Map.of());
        assertEquals(new Money(160).fine(), enough.act().paid());
        assertEquals(List.of(), enough.unpaid());
        assertTrue(enough.findAffordable().isEmpty());
    }

    /** Two pieces of one line want a reel each: the money for one buys one, and one piece stays without rope. */
    @Test
    void budget_paysForThePiecesOfALineOneByOne() {
        Orders orders = Stall.orders(Stall.pieces(90, 2), List.of(Stall.offer("big", 100, 80)));
        Advice advice = spending(orders, new Spending(new Money(100), Spending.FOREVER), Map.of());
        assertEquals(1, advice.act().set().of("big"));
        assertEquals(new Money(80).fine(), advice.act().paid());
        assertEquals(List.of("A/1.2"), advice.unpaid());
        Advice nothing = spending(orders, new Spending(new Money(79), Spending.FOREVER), Map.of());
        assertEquals(ReelSet.EMPTY, nothing.act().set());
        assertEquals(List.of("A/1.1", "A/1.2"), nothing.unpaid());
    }

    /** Both are to be cut within the week: priority comes before the day. */
    @Test
    void budget_servesTheClassThenThePriorityThenTheDay() {
        List<Piece> pieces = List.of(
                urgent("SOONER", 5, Stall.DAY.plusDays(3)),
                urgent("WEIGHTIER", 2, Stall.DAY.plusDays(4)),
                urgent("TODAY", 9, Stall.DAY));
        Orders orders = Stall.orders(pieces, List.of(Stall.offer("big", 100, 80)));
        assertEquals(
                List.of("WEIGHTIER/1.1", "SOONER/1.1"),
                spending(orders, new Spending(new Money(80), Spending.FOREVER), Map.of())
                        .unpaid());
        assertEquals(
                List.of("SOONER/1.1"),
                spending(orders, new Spending(new Money(160), Spending.FOREVER), Map.of())
                        .unpaid());
    }

    /** What a supplier charges by order is paid, too: 80 and 25 are above 100. */
    @Test
    void budget_countsTheFreightByOrder() {
        Supplier works = new Supplier(
                "Works",
                "",
                "",
                new Supplier.Freight(new Money(25), MassPrice.NOTHING, Supplier.Freight.NEVER),
                Money.ZERO,
                null,
                "");
        Orders orders = Stall.sent(Stall.pieces(90, 2), List.of(Stall.sold("big", "Works", 100, 80)), List.of(works));
        assertEquals(
                ReelSet.EMPTY,
                spending(orders, new Spending(new Money(100), Spending.FOREVER), Map.of())
                        .act()
                        .set());
        assertEquals(
                new Money(105).fine(),
                spending(orders, new Spending(new Money(110), Spending.FOREVER), Map.of())
                        .act()
                        .paid());
    }

    /** The least cost pays 1240: with a budget of 1000 the least paid is recommended. */
    @Test
    void wayAboveTheBudget_isShownButNotRecommended() {
        Offer long200 = tolerant("A200", 200, 620 * EURO, Ratio.percent(5));
        List<Piece> pieces = new ArrayList<>();
        for (int n = 1; n <= 4; n++) {
            pieces.add(millimetres("A/1." + n, 47_600, LocalDate.MAX));
        }
        Orders orders = Stall.orders(pieces, List.of(), DEAR, List.of(long200, Stall.offer("B100", 100, 350 * EURO)));
        Advice advice = spending(orders, new Spending(new Money(800 * EURO), Spending.FOREVER), Map.of());
        assertEquals(new Money(700 * EURO).fine(), advice.act().paid());
        assertEquals(new Money(440 * EURO).fine(), advice.way(Aim.LEAST_COST).overBudget());
    }

    /** Three ways to have two pieces: 120, 150 and 300 are paid, the dearer the less it costs; 200 may be paid. */
    @Test
    void leastCostWithinTheBudget_isTheOneBetween() {
        StockValue all = length -> new UnitPrice(1000).of(length);
        List<Offer> offers =
                List.of(Stall.offer("small", 60, 60), Stall.offer("middle", 210, 150), Stall.offer("large", 600, 300));
        Orders orders = Stall.orders(Stall.pieces(60, 2), List.of(), all, offers);
        Advice advice = spending(orders, new Spending(new Money(200), Spending.FOREVER), Map.of());
        assertEquals(1, advice.way(Aim.LEAST_COST).purchase().set().of("large"));
        assertEquals(1, advice.act().set().of("middle"));
        assertEquals(2, advice.way(Aim.LEAST_PAID).purchase().set().of("small"));
    }

    /** Work takes 10 m a week. Of two of 60 there are 80 left of two reels of 100, 180 of one of 300: 18 weeks. */
    @Test
    void mostWeeks_boundWhatIsLeftOnceTheOrdersAreCut() {
        List<Offer> offers = List.of(Stall.offer("short", 100, 100), Stall.offer("long", 300, 120));
        Map<String, Length> weekly = Map.of(Stall.ROPE, Length.ofMetres(10));
        Orders orders = Stall.orders(Stall.pieces(60, 2), offers);
        Advice enough = spending(orders, new Spending(Spending.ANY, 18), weekly);
        assertEquals(1, enough.act().set().of("long"), "a reel of 300 lasts 30 weeks, what is left of it 18");
        assertEquals(List.of(), enough.tooLong());
        Advice fewer = spending(orders, new Spending(Spending.ANY, 17), weekly);
        for (Way way : fewer.ways()) {
            assertEquals(2, way.purchase().set().of("short"));
            assertEquals(List.of(), way.overWeeks());
        }
        TooLong left = fewer.tooLong().get(0);
        assertEquals(1, left.set().of("long"));
        assertEquals(180, left.tenths());
        assertEquals(fewer.best().cost().minus(enough.best().cost()), left.saved(), "costs compare");
    }

    /** A piece of 250 wants the reel of 300 whatever is said of weeks; of two that hold it the one that lasts less is given. */
    @Test
    void mostWeeks_whereNoWayKeepsWithin_theLeastIsLeft() {
        List<Offer> offers =
                List.of(Stall.offer("short", 100, 100), Stall.offer("long", 300, 120), Stall.offer("longer", 400, 110));
        Map<String, Length> weekly = Map.of(Stall.ROPE, Length.ofMetres(10));
        Advice advice = spending(Stall.orders(Stall.pieces(250, 1), offers), new Spending(Spending.ANY, 2), weekly);
        assertEquals(1, advice.ways().size());
        assertEquals(1, advice.act().set().of("long"));
        assertEquals(0, advice.act().set().of("longer"));
        assertEquals(List.of(Stall.ROPE), advice.ways().get(0).overWeeks());
    }

    /** A way that keeps within the weeks is found wherever trying set by set finds one, and costs no more than any of them. */
    @Test
    void mostWeeks_inSmallShops_areKeptWhereAnySetKeepsThem() {
        Random dice = new Random(20260303);
        for (int round = 0; round < Integer.getInteger("shops", 60) / 3; round++) {
            List<Offer> offers = List.of(
                    Stall.offer("a", 40 + dice.nextInt(60), 30 + dice.nextInt(60)),
                    Stall.offer("b", 100 + dice.nextInt(100), 60 + dice.nextInt(60)),
                    Stall.offer("c", 200 + dice.nextInt(200), 90 + dice.nextInt(60)));
            Orders orders = Stall.orders(
                    Stall.pieces(10 + dice.nextInt(30), 1 + dice.nextInt(4), 20 + dice.nextInt(15), 2), offers);
            Map<String, Length> weekly = Map.of(Stall.ROPE, Length.ofMetres(5 + dice.nextInt(10)));
            int most = 1 + dice.nextInt(15);
            Advice free = spending(orders, Spending.UNLIMITED, weekly);
            Advice advice = spending(orders, new Spending(Spending.ANY, most), weekly);
            String told = "seed 20260303, round " + round;
            long cover = free.ways().stream()
                    .mapToLong(way -> way.covers().get(0).left().mm())
                    .min()
                    .orElseThrow();
            for (Way way : advice.ways()) {
                assertTrue(
                        way.overWeeks().isEmpty() || way.covers().get(0).left().mm() <= cover,
                        told + ": more is left with the limit than without");
            }
            assertTrue(advice.best().cost().compareTo(free.best().cost()) >= 0, told);
            assertTrue(advice.best().bound().compareTo(advice.best().cost()) <= 0, told);
        }
    }

    /** 40 on the rack, 200 bought, 130 cut: 110 left, at 5 a week for 22 weeks. */
    /** 44.8 m at 41.6 m a week are 1.08 weeks: above a most of one week they are 1.1, not 1.0. */
    @Test
    void weeksAboveAMost_areRoundedUp() {
        Cover cover =
                new Cover(Stall.ROPE, Length.ZERO, Length.ZERO, new Length(44_800), Length.ZERO, new Length(41_600));
        assertTrue(cover.isAbove(1));
        assertEquals(10, cover.tenths());
        assertEquals(11, cover.tenthsRoundedUp());
    }

    @Test
    void cover_isWhatIsLeftByTheWeek() {
        Orders orders = Stall.orders(
                Stall.pieces(65, 2), List.of(Stall.reel("R1", 40)), DEAR, List.of(Stall.offer("a", 200, 100)));
        Advice advice = spending(orders, new Spending(Spending.ANY, 20), Map.of(Stall.ROPE, Length.ofMetres(5)));
        assertEquals(List.of(Stall.ROPE), advice.ways().get(0).overWeeks());
        assertEquals(1, advice.act().set().of("a"), "no way has fewer weeks");
        advice = spending(orders, new Spending(Spending.ANY, 40), Map.of(Stall.ROPE, Length.ofMetres(5)));
        Cover cover = advice.ways().get(0).covers().get(0);
        assertEquals(Length.ofMetres(110), cover.left());
        assertEquals(220, cover.tenths());
        assertFalse(spending(orders, Spending.UNLIMITED, Map.of())
                .ways()
                .get(0)
                .covers()
                .get(0)
                .isKnown());
    }

    private static Piece urgent(String order, int priority, LocalDate due) {
        Piece piece = Stall.piece(order, "1.1", 90, due);
        return new Piece(
                piece.id(),
                new Piece.Source(order, "1", due, priority),
                piece.choices(),
                Piece.Matching.NONE,
                "",
                false,
                piece.cut(),
                "plain / plain");
    }

    private static Advice spending(Orders orders, Spending spending, Map<String, Length> weekly) {
        return new Buyer(orders, FullStrategy.patternsAlone(), Effort.of(Duration.ofSeconds(10)), spending, weekly)
                .advise();
    }

    private static Piece millimetres(String id, long millimetres, LocalDate due) {
        Length cut = new Length(millimetres);
        return new Piece(
                id,
                new Piece.Source("A", "1", due, 5),
                List.of(new Piece.RopeChoice(Stall.ROPE, cut)),
                Piece.Matching.NONE,
                "",
                false,
                cut,
                "plain / plain");
    }

    private static Offer tolerant(String id, long metres, long price, Ratio tolerance) {
        return new Offer(
                id,
                "",
                Stall.ROPE,
                new Offer.Made(
                        Written.worked(Length.ofMetres(metres)), tolerance, Reel.Known.METERED, false, "", false),
                Offer.Terms.of(new Money(price)));
    }
}
