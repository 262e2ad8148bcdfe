package bitterend.work.trade;

import bitterend.buying.FreeRope;
import bitterend.buying.steady.StartingRack;
import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.exchange.Shop;
import bitterend.market.OnOrder;
import bitterend.market.UsualLateness;
import bitterend.work.ComingReels;
import bitterend.work.ShopNow;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The rack of a day as a study starts from it: what may be cut, what is on order, and what is ordered of us and not cut. */
final class RackThereIs {
    private static final int DAYS_OF_A_WEEK = 7;

    private final Shop shop;
    private final LocalDate day;
    private final List<Piece> open;
    private final FreeRope free;
    private final UsualLateness lateness;

    RackThereIs(ShopNow now, LocalDate day) {
        shop = now.shop();
        this.day = day;
        Set<String> still = now.stillOpen();
        open = shop.pieces().stream()
                .filter(piece -> still.contains(piece.id()) && !piece.ownRope())
                .toList();
        free = new FreeRope(shop.reels(), open, day);
        lateness = ComingReels.lateness(shop);
    }

    StartingRack of(Rope rope) {
        return new StartingRack(
                true,
                free.stretches(rope),
                shop.supplies().onOrder().stream()
                        .filter(order -> order.rope().equals(rope.id()))
                        .flatMap(this::coming)
                        .toList(),
                open.stream()
                        .filter(piece -> piece.orderedRope().equals(rope.id()))
                        .map(Piece::cut)
                        .toList());
    }

    /** Reels of an order, before the first week that begins when they are counted on; what comes within the first is there for it. */
    private Stream<StartingRack.Coming> coming(OnOrder order) {
        long days = ChronoUnit.DAYS.between(day, lateness.from(order, day));
        int week = Math.toIntExact(Math.max(1, (days + DAYS_OF_A_WEEK - 1) / DAYS_OF_A_WEEK)) - 1;
        return Collections.nCopies(order.quantity(), new StartingRack.Coming(week, order.usable())).stream();
    }
}
