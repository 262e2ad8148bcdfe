package bitterend.market;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.MassPrice;
import bitterend.measure.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Bills of random orders against a plain adding up, in decimal numbers and by the words of docs/file-formats.md alone. */
final class RandomBillsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final long SEED = Long.getLong("seed", 20260302);
    private static final int ROUNDS = Integer.getInteger("bills", 2_000);
    private static final int MOST_REELS = 12;

    @Test
    void bills_areAsAddedUpPlainly() {
        Random random = new Random(SEED);
        for (int round = 0; round < ROUNDS; round++) {
            Day day = new Day(random);
            Map<String, Integer> reels = new HashMap<>();
            day.offers.forEach(offer -> reels.put(offer.id(), random.nextInt(MOST_REELS)));
            Bill bill = day.market().bill(reels);
            String told =
                    "seed " + SEED + ", round " + round + ": " + reels + " of " + day.offers + ", " + day.suppliers;
            assertEquals(day.sum(reels), BigDecimal.valueOf(bill.sum().minor()), told);
            assertEquals(day.isForbidden(reels), !bill.isAllowed(), told);
        }
    }

    /** A few offers of a few suppliers, one of whom nobody knows. */
    private static final class Day {
        final List<Offer> offers = new ArrayList<>();
        final List<Supplier> suppliers = new ArrayList<>();
        private final Map<String, LinearMass> masses = Map.of("A", new LinearMass(79_000), "B", new LinearMass(0));

        Day(Random random) {
            for (String name : List.of("N", "L")) {
                suppliers.add(MarketTest.supplier(
                        name,
                        random.nextInt(3) * 650L,
                        random.nextBoolean()
                                ? MassPrice.NOTHING
                                : new MassPrice(
                                        random.nextInt(50_000), random.nextBoolean() ? 1_000_000_000L : 453_592_370L),
                        random.nextBoolean() ? Long.MAX_VALUE : random.nextInt(300_000),
                        random.nextInt(3) * 10_000L));
            }
            for (int i = 0; i < 1 + random.nextInt(4); i++) {
                offers.add(offer("o" + i, random));
            }
        }

        private static Offer offer(String id, Random random) {
            long price = 1_000L + random.nextInt(40_000);
            TreeMap<Integer, Money> breaks = new TreeMap<>();
            for (int from = 2 + random.nextInt(5);
                    random.nextBoolean() && breaks.size() < 3;
                    from += 1 + random.nextInt(4)) {
                breaks.put(from, new Money(price - 100L * (breaks.size() + 1)));
            }
            return new Offer(
                    id,
                    List.of("N", "L", "nobody knows", "").get(random.nextInt(4)),
                    random.nextBoolean() ? "A" : "B",
                    Offer.Made.plain(new Length(1 + random.nextInt(300_000))),
                    new Offer.Terms(
                            new ReelPrice(new Money(price), breaks),
                            new Money(random.nextInt(2) * 350L),
                            random.nextBoolean() ? Offer.Terms.UNLIMITED : random.nextInt(8),
                            1 + random.nextInt(3),
                            Offer.Lead.AT_ONCE,
                            random.nextInt(5) == 0 ? DAY.minusDays(1) : DAY));
        }

        Market market() {
            return new Market(DAY, offers, suppliers, masses);
        }

        private BigDecimal goods(String supplier, Map<String, Integer> reels) {
            BigDecimal goods = BigDecimal.ZERO;
            for (Offer offer : of(supplier, reels)) {
                int count = reels.getOrDefault(offer.id(), 0);
                long each = offer.terms().price().one().minor();
                for (Map.Entry<Integer, Money> step :
                        offer.terms().price().breaks().entrySet()) {
                    each = count >= step.getKey() ? step.getValue().minor() : each;
                }
                goods = goods.add(BigDecimal.valueOf(each).multiply(BigDecimal.valueOf(count)));
            }
            return goods;
        }

        private List<Offer> of(String supplier, Map<String, Integer> reels) {
            return offers.stream()
                    .filter(offer -> offer.supplier().equals(supplier) && reels.getOrDefault(offer.id(), 0) > 0)
                    .toList();
        }

        BigDecimal sum(Map<String, Integer> reels) {
            BigDecimal sum = BigDecimal.ZERO;
            for (String name : List.of("N", "L", "nobody knows", "")) {
                sum = sum.add(goods(name, reels)).add(freight(name, reels));
            }
            return sum.setScale(0, RoundingMode.UNNECESSARY);
        }

        private BigDecimal freight(String name, Map<String, Integer> reels) {
            List<Offer> mine = of(name, reels);
            Supplier known = suppliers.stream()
                    .filter(supplier -> supplier.name().equals(name))
                    .findFirst()
                    .orElse(Supplier.named(name));
            boolean free = goods(name, reels)
                            .compareTo(BigDecimal.valueOf(
                                    known.freight().freeFrom().minor()))
                    >= 0;
            if (mine.isEmpty() || free) {
                return BigDecimal.ZERO;
            }
            BigDecimal freight = BigDecimal.valueOf(known.freight().byOrder().minor());
            BigDecimal grams = BigDecimal.ZERO;
            for (Offer offer : mine) {
                BigDecimal count = BigDecimal.valueOf(reels.getOrDefault(offer.id(), 0));
                freight = freight.add(count.multiply(
                        BigDecimal.valueOf(offer.terms().freight().minor())));
                long milligrams = offer.rope().equals("A") ? 79_000 : 0;
                // mg/m times mm are millionths of a gram; the line's mass is rounded up to grams.
                grams = grams.add(count.multiply(BigDecimal.valueOf(
                                milligrams * offer.made().length().mm()))
                        .movePointLeft(6)
                        .setScale(0, RoundingMode.CEILING));
            }
            MassPrice price = known.freight().byMass();
            BigDecimal byMass = BigDecimal.valueOf(price.millis())
                    .movePointLeft(3)
                    .multiply(grams)
                    .multiply(BigDecimal.valueOf(1_000_000))
                    .divide(BigDecimal.valueOf(price.micrograms()), 0, RoundingMode.CEILING);
            return freight.add(byMass);
        }

        boolean isForbidden(Map<String, Integer> reels) {
            boolean offer = offers.stream().anyMatch(each -> {
                int count = reels.getOrDefault(each.id(), 0);
                Offer.Terms terms = each.terms();
                return count > 0
                        && (count < terms.minimum() || count > terms.supply() || DAY.isAfter(terms.validUntil()));
            });
            return offer
                    || suppliers.stream()
                            .anyMatch(supplier -> !of(supplier.name(), reels).isEmpty()
                                    && goods(supplier.name(), reels)
                                                    .compareTo(BigDecimal.valueOf(supplier.minimumOrder()
                                                            .minor()))
                                            < 0);
        }
    }
}
