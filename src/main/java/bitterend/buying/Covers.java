package bitterend.buying;

import bitterend.catalogue.Rope;
import bitterend.measure.Length;
import java.util.List;
import java.util.Map;

/** How long ropes last. */
final class Covers {
    private final Orders orders;
    private final Map<String, Length> weekly;

    /** @param weekly what work took of a rope in a week of the past, by its id; ropes without a past are not named */
    Covers(Orders orders, Map<String, Length> weekly) {
        this.orders = orders;
        this.weekly = weekly;
    }

    /** What work takes of a rope in a week; zero where that is not known. */
    Length weekly(String rope) {
        return weekly.getOrDefault(rope, Length.ZERO);
    }

    /** Of each rope that is bought, by its id. */
    List<Cover> of(ReelSet set) {
        return set.counts().keySet().stream()
                .map(offer -> orders.offer(offer).rope())
                .distinct()
                .sorted(bitterend.finding.NaturalOrder.IDS)
                .map(rope -> of(rope, set))
                .toList();
    }

    private Cover of(String rope, ReelSet set) {
        Length onOrder = orders.onOrder().stream()
                .filter(order -> order.rope().equals(rope))
                .map(order -> order.usable().times(order.quantity()))
                .reduce(Length.ZERO, Length::plus);
        Length bought = set.counts().entrySet().stream()
                .filter(entry -> orders.offer(entry.getKey()).rope().equals(rope))
                .map(entry -> orders.offer(entry.getKey()).usable().times(entry.getValue()))
                .reduce(Length.ZERO, Length::plus);
        FreeRope free = new FreeRope(
                orders.day().reels(), orders.day().pieces(), orders.day().day());
        Rope known = orders.day().rope(rope);
        return new Cover(rope, free.of(known), onOrder, bought, free.booked(known), weekly(rope));
    }
}
