package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.market.Offer;
import bitterend.measure.Cost;
import bitterend.measure.Money;
import bitterend.packing.Effort;
import bitterend.packing.strategy.FullStrategy;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Ways that are made of what was found for several ropes. */
final class WaysChosenTest {
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
                .advice(buying -> Effort.of(Duration.ofSeconds(1)), (anyway, late) -> {
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
}
