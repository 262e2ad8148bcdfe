package bitterend.work.trade;

import bitterend.buying.KnotValue;
import bitterend.buying.RackWorth;
import bitterend.buying.Study;
import bitterend.catalogue.Rope;
import bitterend.exchange.Shop;
import bitterend.market.Offer;
import bitterend.stock.StockValue;
import bitterend.work.CoilCurves;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/** The ropes of a shop that have both an offer and a past, and what coils of them are worth on a rack that is studied. */
final class StudiedRopes {
    private final Shop shop;
    private final CoilCurves curves;

    StudiedRopes(Shop shop, LocalDate day) {
        this.shop = shop;
        curves = new CoilCurves(shop, day);
    }

    /** Their studies, coils being worth what is given for their rope. */
    List<Study> studies(Study.Size size, Predicate<String> meant, Function<Rope, RackWorth> worth) {
        return shop.catalogue().ropes().stream()
                .filter(rope -> meant.test(rope.id()))
                .filter(rope -> shop.supplies().offers().stream()
                        .anyMatch(offer -> offer.rope().equals(rope.id()) && offer.plannable()))
                .filter(rope -> shop.supplies().history().ropes().contains(rope.id()))
                .map(rope -> Study.of(
                        rope,
                        worth.apply(rope),
                        shop.settings().prices(),
                        shop.supplies().offers(),
                        shop.supplies().history().cutsOf(rope.id()),
                        size))
                .toList();
    }

    /** As the shop typed it, else by the coil curve. */
    RackWorth worth(Rope rope) {
        KnotValue typed = shop.supplies().values().typed().get(rope.id());
        return typed == null ? coils(rope) : typed(typed, rope);
    }

    /** By a curve of the shop's own, never more than the cheapest offer by the metre. */
    RackWorth typed(StockValue typed, Rope rope) {
        return Offer.cheapest(rope.id(), shop.supplies().offers())
                .map(offer -> RackWorth.always(typed, offer.byMetre()))
                .orElseGet(() -> RackWorth.always(typed));
    }

    /** By the coil curve, where the cheapest offer by the metre is bought. */
    RackWorth coils(Rope rope) {
        return Offer.cheapest(rope.id(), shop.supplies().offers())
                .map(offer -> RackWorth.of(curves.bought(rope, offer.byMetre(), offer.usable())))
                .orElseGet(() -> RackWorth.of(curves.of(rope)));
    }
}
