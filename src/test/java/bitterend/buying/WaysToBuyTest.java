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
        Orders orders = of(Stall.pieces(90, 2), List.of(sold("big", "Works", 100, 80)), List.of(works));
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

    /** Three ropes with a way for 60, 150 and 300 each: the money is spent where it saves most, over all of them. */
    @Test
    void budget_isSpentWhereItSavesMost_overAllRopes() {
        List<PartFound> parts = new ArrayList<>();
        Random dice = new Random(5);
        for (int round = 0; round < 200; round++) {
            parts.clear();
            int ropes = 2 + dice.nextInt(4);
            for (int rope = 0; rope < ropes; rope++) {
                List<Purchase> ways = new ArrayList<>();
                for (int way = 0; way < 4; way++) {
                    ways.add(bought("r" + rope + "w" + way, 20 + dice.nextInt(100), 500 - dice.nextInt(200)));
                }
                parts.add(PartFound.of(ways.get(0), List.of(), List.of()).with(ways));
            }
            List<Offer> offers = parts.stream()
                    .flatMap(part -> part.found().stream())
                    .map(each -> Stall.offer(
                            each.set().counts().firstKey(),
                            100,
                            each.paid().rounded().minor()))
                    .toList();
            Money budget = new Money(40L * ropes + dice.nextInt(30 * ropes));
            Combination all = new Combination(Stall.market(offers, List.of()), parts);
            Purchase found = all.together(all.within(budget.fine()));
            long best = least(parts, 0, budget.fine().millis());
            if (best < Long.MAX_VALUE) {
                assertTrue(found.paid().compareTo(budget.fine()) <= 0);
                assertEquals(best, found.cost().millis(), "seed 5, round " + round);
            }
        }
    }

    /** The tie of one rope is settled for the least paid: no way between may have it the other way and cost less. */
    @Test
    void tieThatIsSettled_isSettledForEveryWay() {
        List<Purchase> tied = List.of(bought("a1", 100, 60), bought("a2", 200, 50));
        List<Purchase> other = List.of(bought("b1", 100, 60), bought("b2", 300, 55));
        Orders orders = Stall.orders(
                List.of(),
                List.of(
                        Stall.offer("a1", 100, 100),
                        Stall.offer("a2", 200, 200),
                        Stall.offer("b1", 100, 100),
                        Stall.offer("b2", 300, 300)));
        List<PartFound> parts = List.of(found(tied, 35), found(other, 55));
        PartBuyer none = new PartBuyer(
                orders,
                FullStrategy.patternsAlone(),
                Effort.of(Duration.ofSeconds(1)),
                new CoverLimit(new Covers(orders, Map.of()), Spending.UNLIMITED));
        Advice advice = new WaysChosen(
                        orders, List.of(none, none), parts, new WaysChosen.Bounds(Map.of(), Spending.UNLIMITED, 1))
                .advice((anyway, late) -> {
                    throw new IllegalStateException("there is no budget");
                });
        assertEquals(1, advice.ties().size());
        assertEquals(2, advice.ways().size(), advice.ways().toString());
        assertTrue(advice.ways()
                        .get(1)
                        .purchase()
                        .cost()
                        .compareTo(advice.ways().get(0).purchase().cost())
                < 0);
    }

    private static PartFound found(List<Purchase> all, long bound) {
        PartFound any = PartFound.of(all.get(0).boundedBy(new Money(bound).fine()), List.of(), List.of());
        return any.with(all);
    }

    private static long least(List<PartFound> parts, int part, long money) {
        if (part == parts.size()) {
            return 0;
        }
        long least = Long.MAX_VALUE;
        for (Purchase each : parts.get(part).found()) {
            long left = money - each.paid().millis();
            long rest = left < 0 ? Long.MAX_VALUE : least(parts, part + 1, left);
            least = rest == Long.MAX_VALUE ? least : Math.min(least, each.cost().millis() + rest);
        }
        return least;
    }

    private static Purchase bought(String offer, long paid, long cost) {
        return new Purchase(
                ReelSet.EMPTY.with(offer, 1),
                new Money(cost).fine(),
                Cost.ZERO,
                new Paid(new Money(paid).fine(), Cost.ZERO),
                Left.NONE,
                List.of(),
                List.of());
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

    /** 40 on the rack, 200 bought, 130 cut: 110 left, at 5 a week for 22 weeks. */
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
        Orders orders = of(Stall.pieces(80, 2), List.of(sold("a", "Works", 100, 70)), List.of(works));
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
        List<Offer> offers = List.of(sold("far", "Works", 100, 70), sold("near", "Loft", 100, 80));
        assertEquals(
                1,
                advise(of(Stall.pieces(80, 1), offers, List.of(works)))
                        .best()
                        .set()
                        .of("near"));
        assertEquals(
                3,
                advise(of(Stall.pieces(80, 3), offers, List.of(works)))
                        .best()
                        .set()
                        .of("far"));
    }

    /** The works send nothing below 150: a reel more reaches that, or the other one is asked where he is not too dear. */
    @Test
    void leastOrder_isReachedOrTold() {
        Supplier works = new Supplier("Works", "", "", Supplier.Freight.NONE, new Money(150), null, "");
        Purchase alone = advise(of(Stall.pieces(80, 1), List.of(sold("far", "Works", 100, 80)), List.of(works)))
                .best();
        assertEquals(2, alone.set().of("far"));
        List<Offer> both = List.of(sold("far", "Works", 100, 80), sold("near", "Loft", 100, 95));
        assertEquals(
                1,
                advise(of(Stall.pieces(80, 1), both, List.of(works)))
                        .way(Aim.LEAST_PAID)
                        .purchase()
                        .set()
                        .of("near"));
        Offer last = Stall.limited(sold("far", "Works", 100, 80), 1, 1, 0);
        Way told = advise(of(Stall.pieces(80, 1), List.of(last), List.of(works)))
                .ways()
                .get(0);
        assertTrue(told.bill().objections().get(0) instanceof Bill.Objection.BelowMinimumOrder, told.toString());
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

    private static Offer sold(String id, String supplier, long metres, long price) {
        Offer offer = Stall.offer(id, metres, price);
        return new Offer(id, supplier, offer.rope(), offer.made(), offer.terms());
    }

    private static Orders of(List<Piece> pieces, List<Offer> offers, List<Supplier> suppliers) {
        Orders plain = Stall.orders(pieces, offers);
        return new Orders(plain.day(), List.of(), Stall.market(offers, suppliers), Stall.late(0));
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

    private static Advice spending(Orders orders, Spending spending, Map<String, Length> weekly) {
        return new Buyer(orders, FullStrategy.patternsAlone(), Effort.of(Duration.ofSeconds(10)), spending, weekly)
                .advise();
    }

    private static Advice advise(Orders orders) {
        return new Buyer(orders, FullStrategy.patternsAlone(), Effort.of(Duration.ofSeconds(10))).advise();
    }
}
