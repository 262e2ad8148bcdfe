package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.market.Offer;
import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Which offers are not bought for stock, since a single reel lasts longer than rope may. */
final class LongReels {
    private static final int TENTHS = 10;

    private final Orders orders;
    private final Covers covers;
    private final Spending spending;

    LongReels(Orders orders, Covers covers, Spending spending) {
        this.orders = orders;
        this.covers = covers;
        this.spending = spending;
    }

    /** Each with a piece that nothing shorter holds, where there is one. */
    List<TooLong> all() {
        List<Offer> all = orders.offers().stream().filter(this::isLong).toList();
        if (all.isEmpty()) {
            return List.of();
        }
        List<Offer> others =
                orders.offers().stream().filter(offer -> !isLong(offer)).toList();
        Holding shorter =
                PartBuyer.holding(orders.offering(others), orders.day().pieces(), everyone());
        List<Piece> waiting = orders.day().pieces().stream()
                .filter(piece -> !piece.ownRope() && !shorter.holds(piece))
                .toList();
        List<TooLong> named = new ArrayList<>();
        for (Offer offer : all) {
            Length weekly = covers.weekly(offer.rope());
            named.add(new TooLong(offer, offer.usable().mm() * TENTHS / weekly.mm(), needing(offer, waiting)));
        }
        return named;
    }

    private boolean isLong(Offer offer) {
        Length weekly = covers.weekly(offer.rope());
        return spending.hasMostWeeks()
                && weekly.isPositive()
                && offer.usable().mm() / spending.mostWeeks() > weekly.mm();
    }

    private String needing(Offer offer, List<Piece> waiting) {
        Holding alone = PartBuyer.holding(orders.offering(List.of(offer)), waiting, everyone());
        return waiting.stream().filter(alone::holds).map(Piece::id).findFirst().orElse("");
    }

    private Set<String> everyone() {
        return PartBuyer.ids(orders.day().pieces());
    }
}
