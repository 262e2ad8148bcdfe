package bitterend.buying;

import bitterend.finding.NaturalOrder;
import bitterend.market.Offer;
import bitterend.market.OnOrder;
import bitterend.packing.PackingProblem;
import java.util.Comparator;
import java.util.List;

/**
 * Firm demand: what is ordered of us, what is there, what is on its way, and what can be had.
 *
 * @param day the pieces wanted, the reels on the rack, values and prices; its day is the day reels would be ordered
 * @param onOrder reels on their way
 * @param offers what suppliers offer
 */
public record Orders(PackingProblem day, List<OnOrder> onOrder, List<Offer> offers) {
    public Orders {
        onOrder = List.copyOf(onOrder);
        offers = offers.stream()
                .sorted(Comparator.comparing(Offer::id, NaturalOrder.IDS))
                .toList();
    }

    /** The offers that can be planned for. */
    List<Offer> plannable() {
        return offers.stream().filter(Offer::plannable).toList();
    }

    Offer offer(String id) {
        return offers.stream()
                .filter(offer -> offer.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no offer " + id));
    }
}
