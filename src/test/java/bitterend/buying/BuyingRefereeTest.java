package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.market.Bill;
import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.market.ReelPrice;
import bitterend.market.Supplier;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.MassPrice;
import bitterend.measure.Money;
import bitterend.measure.UnitPrice;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.Prices;
import bitterend.packing.strategy.FullStrategy;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Small random shops with breaks, minimums, supplies and freight by order: every set of reels is tried with every way to cut
 * the pieces from it, and the least paid and the least cost must be the same. Where a supplier sends large orders freight
 * paid, sets of many reels beyond the need may be better still: there nothing better than possible is claimed.
 */
final class BuyingRefereeTest {
    private static final List<String> ROPES = List.of("P12", "P14");
    private static final long SEED = 20260303;

    private final Random dice = new Random(SEED);

    /** A shop, and what its rope is worth. */
    private record Shop(Orders orders, StockValue worth) {}

    @Test
    void leastPaidAndLeastCost_areThoseOfEverySetTried() {
        int rounds = Integer.getInteger("shops", 60);
        int bought = 0;
        for (int round = 0; round < rounds; round++) {
            Shop shop = shop();
            Advice advice =
                    new Buyer(shop.orders(), FullStrategy.patternsAlone(), Effort.of(Duration.ofSeconds(20))).advise();
            Referee referee = new Referee(shop);
            referee.tryAll();
            String where = "seed " + SEED + ", round " + round + ": " + told(shop, advice) + "; " + referee.cheapest;
            Purchase paid = advice.way(Aim.LEAST_PAID).purchase();
            Cost cost = advice.ties().stream()
                    .map(Tie::difference)
                    .reduce(advice.best().cost(), Cost::minus);
            assertEquals(referee.fewest, paid.unplanned().size(), where);
            if (shop.orders().market().suppliers().stream()
                    .allMatch(each -> each.freight().freeFrom().equals(Supplier.Freight.NEVER))) {
                assertEquals(referee.paid, paid.paid(), where);
                assertEquals(referee.cost, cost, where);
            }
            assertTrue(referee.paid.compareTo(paid.paid()) <= 0, where);
            assertTrue(referee.cost.compareTo(cost) <= 0, where);
            assertTrue(advice.paidBound().compareTo(referee.paid) <= 0, where);
            assertTrue(advice.best().bound().compareTo(referee.cost) <= 0, where);
            bought += paid.set().reels() > 0 ? 1 : 0;
        }
        assertTrue(bought * 2 > rounds, bought + " of " + rounds + " shops buy anything");
    }

    private static String told(Shop shop, Advice advice) {
        StringBuilder told = new StringBuilder();
        shop.orders().day().pieces().forEach(piece -> told.append(piece.orderedRope() + " " + piece.cut() + ", "));
        shop.orders().day().reels().forEach(reel -> told.append(reel.rope() + " coil " + reel.length() + ", "));
        shop.orders()
                .offers()
                .forEach(offer -> told.append(
                        "\n" + offer.id() + " of " + offer.supplier() + " " + offer.usable() + " " + offer.terms()));
        shop.orders().market().suppliers().forEach(supplier -> told.append("\n" + supplier));
        advice.ways()
                .forEach(way -> told.append("\n" + way.aims() + way.purchase().set()
                        + way.purchase().paid() + way.purchase().cost()));
        return told + "\n" + advice.ties();
    }

    private Shop shop() {
        List<String> ropes = ROPES.subList(0, 1 + dice.nextInt(2));
        StockValue worth = dice.nextInt(3) == 0
                ? StockValue.NOTHING
                : length -> length.mm() < 8_000 ? Cost.ZERO : new UnitPrice(700).of(length);
        List<Piece> pieces = new ArrayList<>();
        int many = 2 + dice.nextInt(4);
        for (int n = 1; n <= many; n++) {
            pieces.add(piece(ropes.get(dice.nextInt(ropes.size())), n, 8 + dice.nextInt(30)));
        }
        List<Reel> rack = new ArrayList<>();
        for (int n = 1; n <= dice.nextInt(3); n++) {
            rack.add(reel("R" + n, ropes.get(dice.nextInt(ropes.size())), 10 + dice.nextInt(30)));
        }
        List<Offer> offers = new ArrayList<>();
        for (String rope : ropes) {
            offers.add(offer("o" + rope, rope, 40));
            if (ropes.size() == 1 || dice.nextBoolean()) {
                offers.add(offer("x" + rope, rope, 20));
            }
        }
        Map<String, Rope> known = new TreeMap<>();
        Map<String, StockValue> values = new TreeMap<>();
        ropes.forEach(rope -> {
            known.put(rope, Stall.rope().named(rope));
            values.put(rope, worth);
        });
        PackingProblem day =
                new PackingProblem(Stall.DAY, known, pieces, rack, values, Prices.NONE, List.of(), Map.of());
        Market market = new Market(Stall.DAY, offers, List.of(supplier("A"), supplier("B")), Map.of());
        return new Shop(new Orders(day, List.of(), market, Stall.late(0)), worth);
    }

    private Supplier supplier(String name) {
        Money free = dice.nextInt(4) == 0 ? new Money(60 + dice.nextInt(60)) : Supplier.Freight.NEVER;
        return new Supplier(
                name,
                "",
                "",
                new Supplier.Freight(new Money(dice.nextInt(15)), MassPrice.NOTHING, free),
                Money.ZERO,
                null,
                "");
    }

    private Offer offer(String id, String rope, int shortest) {
        long price = 20L + dice.nextInt(40);
        TreeMap<Integer, Money> breaks = new TreeMap<>();
        if (dice.nextBoolean()) {
            breaks.put(2 + dice.nextInt(2), new Money(price - 1 - dice.nextInt(12)));
        }
        return new Offer(
                id,
                dice.nextBoolean() ? "A" : "B",
                rope,
                Offer.Made.plain(Length.ofMetres(shortest + dice.nextInt(50))),
                new Offer.Terms(
                        new ReelPrice(new Money(price), breaks),
                        new Money(dice.nextInt(4)),
                        2 + dice.nextInt(3),
                        1 + dice.nextInt(2),
                        Offer.Lead.AT_ONCE,
                        LocalDate.MAX));
    }

    private static Piece piece(String rope, int n, long metres) {
        return new Piece(
                "A/" + n + ".1",
                new Piece.Source("A", "" + n, LocalDate.MAX, 5),
                List.of(new Piece.RopeChoice(rope, Length.ofMetres(metres))),
                Piece.Matching.NONE,
                "",
                false,
                Length.ofMetres(metres),
                "plain / plain");
    }

    private static Reel reel(String id, String rope, long metres) {
        Reel any = Stall.reel(id, metres);
        return new Reel(
                id, rope, any.lot(), any.contents(), any.flaws(), any.papers(), any.custody(), any.full(), any.where());
    }

    /** Tries every set of reels, and every way to cut the pieces from it and from the rack. */
    private static final class Referee {
        private final Shop shop;
        private final Market market;
        private final List<Offer> offers;
        private final List<Piece> pieces;
        private int fewest = Integer.MAX_VALUE;
        private Cost paid = Cost.ZERO;
        private Cost cost = Cost.ZERO;
        private String cheapest = "";

        Referee(Shop shop) {
            this.shop = shop;
            market = shop.orders().market();
            offers = market.offered();
            pieces = shop.orders().day().pieces();
        }

        void tryAll() {
            weigh(Map.of());
            if (fewest > 0) {
                choose(0, new HashMap<>());
            }
        }

        private void choose(int offer, Map<String, Integer> set) {
            if (offer == offers.size()) {
                if (market.bill(set).isAllowed()) {
                    weigh(set);
                }
                return;
            }
            boolean held = rackHolds(offers.get(offer).rope());
            for (int reels = 0; reels <= (held ? 0 : offers.get(offer).terms().supply()); reels++) {
                set.put(offers.get(offer).id(), reels);
                choose(offer + 1, set);
            }
            set.remove(offers.get(offer).id());
        }

        /** Whether the rack holds every piece of a rope: then none of it is bought, whatever freight that would save. */
        private boolean rackHolds(String rope) {
            long[] left = shop.orders().day().reels().stream()
                    .filter(reel -> reel.rope().equals(rope))
                    .mapToLong(reel -> reel.runs().get(0).length().mm())
                    .toArray();
            List<Piece> some = pieces.stream()
                    .filter(piece -> piece.orderedRope().equals(rope))
                    .toList();
            return holds(some, left);
        }

        private static boolean holds(List<Piece> some, long[] left) {
            if (some.isEmpty()) {
                return true;
            }
            long mm = some.get(0).cut().mm();
            for (int i = 0; i < left.length; i++) {
                if (left[i] >= mm) {
                    long[] then = left.clone();
                    then[i] -= mm;
                    if (holds(some.subList(1, some.size()), then)) {
                        return true;
                    }
                }
            }
            return false;
        }

        /** A length of rope to cut from, whatever it is. */
        private record Bin(String rope, long mm, UnitPrice most, Cost each) {
            /** What so much of it is worth on the rack: no more than the most, and no more than its share of the price. */
            private Cost worth(StockValue worth, long left) {
                long value = worth.of(new Length(left)).millis();
                long share = each.millis() < 0 ? most.of(new Length(left)).millis() : each.millis() * left / mm;
                return new Cost(Math.min(value, share));
            }
        }

        private void weigh(Map<String, Integer> set) {
            List<Bin> bins = new ArrayList<>();
            Cost whole = Cost.ZERO;
            for (Reel reel : shop.orders().day().reels()) {
                Bin bin = new Bin(reel.rope(), reel.runs().get(0).length().mm(), cheapest(reel.rope()), new Cost(-1));
                bins.add(bin);
                whole = whole.plus(bin.worth(shop.worth(), bin.mm()));
            }
            for (Offer offer : offers) {
                int reels = set.getOrDefault(offer.id(), 0);
                Cost each = offer.terms().price().at(reels).fine();
                for (int n = 0; n < reels; n++) {
                    bins.add(new Bin(offer.rope(), offer.usable().mm(), new UnitPrice(0), each));
                }
            }
            Bill bill = market.bill(set);
            long[] left = bins.stream().mapToLong(Bin::mm).toArray();
            String before = paid + " " + cost;
            cut(0, 0, bins, left, bill.sum().fine(), whole);
            cheapest += (paid + " " + cost).equals(before) ? "" : set + " " + paid + " " + cost + " ";
        }

        private UnitPrice cheapest(String rope) {
            long least = Long.MAX_VALUE / 1000;
            for (Offer offer : offers) {
                for (int reels = offer.terms().minimum(); reels <= offer.terms().supply(); reels++) {
                    long each = offer.terms()
                            .price()
                            .at(reels)
                            .plus(offer.terms().freight())
                            .fine()
                            .millis();
                    least = offer.rope().equals(rope)
                            ? Math.min(least, each * 1000 / offer.usable().mm())
                            : least;
                }
            }
            return new UnitPrice(least);
        }

        private void cut(int piece, int unplanned, List<Bin> bins, long[] left, Cost sum, Cost whole) {
            if (unplanned > fewest) {
                return;
            }
            if (piece == pieces.size()) {
                Cost worth = Cost.ZERO;
                for (int i = 0; i < left.length; i++) {
                    worth = worth.plus(bins.get(i).worth(shop.worth(), left[i]));
                }
                answer(unplanned, sum, sum.plus(whole).minus(worth));
                return;
            }
            long mm = pieces.get(piece).cut().mm();
            for (int i = 0; i < left.length; i++) {
                boolean same = i > 0 && bins.get(i).equals(bins.get(i - 1)) && left[i] == left[i - 1];
                if (!same
                        && left[i] >= mm
                        && bins.get(i).rope().equals(pieces.get(piece).orderedRope())) {
                    left[i] -= mm;
                    cut(piece + 1, unplanned, bins, left, sum, whole);
                    left[i] += mm;
                }
            }
            cut(piece + 1, unplanned + 1, bins, left, sum, whole);
        }

        private void answer(int unplanned, Cost sum, Cost total) {
            boolean fewer = unplanned < fewest;
            fewest = unplanned;
            paid = fewer || sum.compareTo(paid) < 0 ? sum : paid;
            cost = fewer || total.compareTo(cost) < 0 ? total : cost;
        }
    }
}
