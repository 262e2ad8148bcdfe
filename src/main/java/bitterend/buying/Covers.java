package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.stock.Reel;
import bitterend.stock.Run;
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
        Length loss = orders.day().rope(rope).cutting().loss();
        Length wanted = orders.day().pieces().stream()
                .filter(piece -> piece.orderedRope().equals(rope) && !piece.ownRope())
                .map(Piece::cut)
                .map(loss::plus)
                .reduce(Length.ZERO, Length::plus);
        return new Cover(rope, free(rope), onOrder, bought, wanted, weekly(rope));
    }

    /** Sound rope that any order may have; rope that is held for an order in hand is wanted by it, and counts. */
    private Length free(String rope) {
        return orders.day().reels().stream()
                .filter(reel -> reel.rope().equals(rope) && isUsable(reel))
                .flatMap(reel -> reel.runs().stream())
                .map(Run::length)
                .reduce(Length.ZERO, Length::plus);
    }

    private boolean isUsable(Reel reel) {
        return !reel.custody().isOnHold()
                && !reel.custody().isCustomersOwn()
                && !reel.custody().isReserved()
                && !reel.papers().useBy().isBefore(orders.day().day());
    }
}
