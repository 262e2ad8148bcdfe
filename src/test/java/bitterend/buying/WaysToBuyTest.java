package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.market.Bill;
import bitterend.market.Offer;
import bitterend.market.Supplier;
import bitterend.market.UsualLateness;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.MassPrice;
import bitterend.measure.Money;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.measure.Written;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.ShopCalendar;
import bitterend.packing.strategy.FullStrategy;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilTerms;
import bitterend.stock.worth.CoilValue;
import bitterend.stock.worth.PastCuts;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The ways to buy: the least paid, the least cost and one between. */
final class WaysToBuyTest {
    private static final long EURO = 100;

    /** 3.10 EUR a metre. */
    private static final StockValue DEAR = length -> new UnitPrice(310_000).of(length);

    /** Three pieces of 47.6 to a reel of 190 that can be counted on, two to a reel of 100. */
    @Test
    void fourPieces_theLeastPaidIsShownBesideTheLeastCost() {
        Offer long200 = tolerant("A200", 200, 620 * EURO, Ratio.percent(5));
        Offer short100 = Stall.offer("B100", 100, 350 * EURO);
        List<Piece> pieces = new ArrayList<>();
        for (int n = 1; n <= 4; n++) {
            pieces.add(millimetres("A/1." + n, 47_600, LocalDate.MAX));
        }
        Advice advice = advise(Stall.orders(pieces, List.of(), DEAR, List.of(long200, short100)));
        Purchase least = advice.way(Aim.LEAST_PAID).purchase();
        assertEquals(2, least.set().of("B100"));
        assertEquals(new Money(700 * EURO).fine(), least.paid());
        assertEquals(new Money(700 * EURO).fine(), advice.paidBound());
        assertEquals(
                new Money(1240 * EURO).fine(),
                advice.way(Aim.LEAST_COST).purchase().paid());
        assertTrue(advice.best().cost().compareTo(least.cost()) < 0);
        for (Way way : advice.ways()) {
            assertEquals(
                    1,
                    advice.ways().stream()
                            .filter(other ->
                                    other.purchase().set().equals(way.purchase().set()))
                            .count());
        }
    }

    /** Six of a reel whose minimum is five cost as much as five where every metre left is worth its price: five are bought. */
    @Test
    void ties_goToTheLeastPaid() {
        Offer five = Stall.limited(Stall.offer("x5", 100, 100), Offer.Terms.UNLIMITED, 5, 0);
        Orders orders =
                Stall.orders(Stall.pieces(60, 5), List.of(), length -> new UnitPrice(1000).of(length), List.of(five));
        Advice advice = advise(orders);
        assertEquals(5, advice.best().set().of("x5"));
        assertEquals(1, advice.ways().size());
    }

    /** A break of 7 % from five reels does not pay for rope that lies for years. */
    @Test
    void reelsForYears_areNotBoughtForASmallBreak() {
        PastCuts past =
                PastCuts.of(Collections.nCopies(104, Length.ofMetres(20)), Length.ZERO, 104, PastCuts.Source.HISTORY);
        CoilTerms terms = CoilTerms.of(
                new UnitPrice(300_000),
                Length.ofMetres(200),
                Length.ofMetres(200),
                new CoilTerms.Holding(Ratio.percent(12), new Cost(10_000), Length.ZERO));
        StockValue curve = CoilValue.of(past, terms, Length.ZERO);
        List<Offer> offers = List.of(
                Stall.offer("one", 200, 600 * EURO),
                Stall.limited(Stall.offer("five", 200, 558 * EURO), Offer.Terms.UNLIMITED, 5, 0));
        Advice advice = advise(Stall.orders(Stall.pieces(20, 3), List.of(), curve, offers));
        assertEquals(new Money(600 * EURO).fine(), advice.act().paid(), advice.toString());
    }

    /** The rack rope is charged at more by the metre than a new reel costs: it is not bought again all the same. */
    @Test
    void ropeOnTheRack_isNotBoughtAgain() {
        Random dice = new Random(20260302);
        StockValue steep = length -> length.mm() < 30_000 ? Cost.ZERO : new UnitPrice(900_000).of(length);
        int rounds = Integer.getInteger("shops", 60);
        for (int round = 0; round < rounds; round++) {
            List<Reel> rack = new ArrayList<>();
            List<Piece> pieces = new ArrayList<>();
            int coils = 1 + dice.nextInt(4);
            for (int coil = 1; coil <= coils; coil++) {
                int metres = 20 + dice.nextInt(80);
                rack.add(Stall.reel("R" + coil, metres));
                for (int left = metres; left >= 5; ) {
                    int cut = 5 + dice.nextInt(left - 4);
                    if (dice.nextInt(3) > 0) {
                        pieces.add(Stall.piece("A", coil + "." + (pieces.size() + 1), cut, LocalDate.MAX));
                    }
                    left -= cut;
                }
            }
            List<Offer> offers = new ArrayList<>();
            for (int n = 0; n <= dice.nextInt(3); n++) {
                offers.add(Stall.limited(
                        Stall.offer("o" + n, 20 + dice.nextInt(200), 1 + dice.nextInt(3)),
                        Offer.Terms.UNLIMITED,
                        1 + dice.nextInt(3),
                        0));
            }
            Advice advice = advise(Stall.orders(pieces, rack, dice.nextBoolean() ? steep : DEAR, offers));
            assertEquals(1, advice.ways().size());
            assertEquals(ReelSet.EMPTY, advice.best().set(), "seed 20260302, round " + round);
            assertTrue(advice.best().unplanned().isEmpty());
        }
    }

    /** Ten fit the coil, two of twelve want a reel: it is bought, and what it is needed for is told. */
    @Test
    void reels_areBoughtForThePiecesThatNeedThem() {
        List<Offer> offers = List.of(Stall.offer("ten", 10, 5), Stall.offer("big", 100, 90));
        Orders orders =
                Stall.orders(Stall.pieces(10, 3, 40, 1), List.of(Stall.reel("R1", 30)), StockValue.NOTHING, offers);
        Purchase least = advise(orders).way(Aim.LEAST_PAID).purchase();
        assertEquals(1, least.set().of("big"));
        Need need = least.lines().get(0).need();
        assertTrue(need.known());
        assertEquals(List.of("A/3.1"), need.without());
        assertTrue(need.cut().contains("A/3.1"));
        assertFalse(need.cheaper().contains("A/3.1"));
    }

    /** Due on Friday the 27th, two working days of splicing behind the cut, seven days on the way, two working days late. */
    @Test
    void orderBy_leavesTheDaysOfWorkAndTheUsualLateness() {
        Piece piece = new Piece(
                "A/1.1",
                new Piece.Source("A", "1", LocalDate.of(2026, 3, 27), 5, 2),
                List.of(new Piece.RopeChoice(Stall.ROPE, Length.ofMetres(10))),
                Piece.Matching.NONE,
                "",
                false,
                Length.ofMetres(10),
                "plain / plain");
        Offer offer = Stall.limited(Stall.offer("slow", 100, 90), Offer.Terms.UNLIMITED, 1, 7);
        Orders plain = Stall.orders(List.of(piece), List.of(offer));
        Orders orders = new Orders(plain.day(), List.of(), plain.market(), Stall.late(2));
        // Cut by Wednesday the 25th, so there on Monday the 23rd at the latest, so ordered on Monday the 16th.
        assertEquals(
                LocalDate.of(2026, 3, 16), advise(orders).best().lines().get(0).orderBy());
        // With a day of closing between, one working day earlier: Friday the 13th.
        PackingProblem day = closing(plain, LocalDate.of(2026, 3, 24));
        Orders closed = new Orders(
                day, List.of(), plain.market(), new UsualLateness(day.calendar(), new ShopCalendar.Ahead(2, true)));
        assertEquals(
                LocalDate.of(2026, 3, 13), advise(closed).best().lines().get(0).orderBy());
    }

    /** Fifty-two of one size: one more of it is no other choice; the one of other sizes is. */
    @Test
    void nextBest_isAnotherChoiceOfSizes() {
        List<Offer> offers = List.of(Stall.offer("small", 10, 10), Stall.offer("big", 60, 200));
        Advice advice = advise(Stall.orders(Stall.pieces(8, 12), offers));
        assertEquals(12, advice.best().set().of("small"));
        assertFalse(advice.next().isEmpty());
        for (Purchase next : advice.next()) {
            assertEquals(0, next.set().of("small"), next.toString());
        }
        assertEquals(
                List.of(),
                advise(Stall.orders(Stall.pieces(8, 12), offers.subList(0, 1))).next());
    }

    /** Two ropes of one supplier: his freight by order is paid once; the one by reel and weight for each reel. */
    @Test
    void freightByOrder_isPaidOnce() {
        Supplier works = new Supplier(
                "Works",
                "",
                "",
                new Supplier.Freight(new Money(25), MassPrice.NOTHING, Supplier.Freight.NEVER),
                Money.ZERO,
                null,
                "");
        Orders orders = Stall.sent(Stall.pieces(80, 2), List.of(Stall.sold("a", "Works", 100, 70)), List.of(works));
        Purchase purchase = advise(orders).best();
        assertEquals(new Paid(new Money(140).fine(), new Money(25).fine()), purchase.bill());
        assertEquals(new Money(165).fine(), advise(orders).paidBound());
    }

    /** Alone the works' reel is cheaper; with what it charges by order the other one is. */
    @Test
    void freightByOrder_decidesWhoIsAsked() {
        Supplier works = new Supplier(
                "Works",
                "",
                "",
                new Supplier.Freight(new Money(25), MassPrice.NOTHING, Supplier.Freight.NEVER),
                Money.ZERO,
                null,
                "");
        List<Offer> offers = List.of(Stall.sold("far", "Works", 100, 70), Stall.sold("near", "Loft", 100, 80));
        assertEquals(
                1,
                advise(Stall.sent(Stall.pieces(80, 1), offers, List.of(works)))
                        .best()
                        .set()
                        .of("near"));
        assertEquals(
                3,
                advise(Stall.sent(Stall.pieces(80, 3), offers, List.of(works)))
                        .best()
                        .set()
                        .of("far"));
    }

    /** The works send nothing below 150: a reel more reaches that, or the other one is asked where he is not too dear. */
    @Test
    void leastOrder_isReachedOrTold() {
        Supplier works = new Supplier("Works", "", "", Supplier.Freight.NONE, new Money(150), null, "");
        Purchase alone = advise(
                        Stall.sent(Stall.pieces(80, 1), List.of(Stall.sold("far", "Works", 100, 80)), List.of(works)))
                .best();
        assertEquals(2, alone.set().of("far"));
        List<Offer> both = List.of(Stall.sold("far", "Works", 100, 80), Stall.sold("near", "Loft", 100, 95));
        assertEquals(
                1,
                advise(Stall.sent(Stall.pieces(80, 1), both, List.of(works)))
                        .way(Aim.LEAST_PAID)
                        .purchase()
                        .set()
                        .of("near"));
        Offer last = Stall.limited(Stall.sold("far", "Works", 100, 80), 1, 1, 0);
        Way told = advise(Stall.sent(Stall.pieces(80, 1), List.of(last), List.of(works)))
                .ways()
                .get(0);
        assertTrue(told.bill().objections().get(0) instanceof Bill.Objection.BelowMinimumOrder, told.toString());
    }

    private static PackingProblem closing(Orders orders, LocalDate day) {
        ShopCalendar usual = ShopCalendar.USUAL;
        return new PackingProblem(
                Stall.DAY,
                Map.of(Stall.ROPE, Stall.rope()),
                orders.day().pieces(),
                List.of(),
                orders.day().values(),
                orders.day().prices(),
                List.of(),
                Map.of(),
                new ShopCalendar(java.util.Set.of(day), usual.next(), usual.soon()));
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

    private static Advice advise(Orders orders) {
        return new Buyer(orders, FullStrategy.patternsAlone(), Effort.of(Duration.ofSeconds(10))).advise();
    }
}
