package bitterend.buying.reorder;

import bitterend.buying.FreeRope;
import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.market.OnOrder;
import bitterend.market.UsualLateness;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.List;

/** What there is of each rope against what is booked, on a day. */
public final class Positions {
    private final FreeRope free;
    private final List<OnOrder> onOrder;
    private final UsualLateness lateness;
    private final LocalDate day;

    /**
     * @param reels on the rack
     * @param open what is ordered and not cut
     * @param onOrder reels on their way
     */
    public Positions(List<Reel> reels, List<Piece> open, List<OnOrder> onOrder, UsualLateness lateness, LocalDate day) {
        free = new FreeRope(reels, open, day);
        this.onOrder = List.copyOf(onOrder);
        this.lateness = lateness;
        this.day = day;
    }

    /** Of one rope. */
    public Position of(Rope rope) {
        return new Position(free.of(rope), coming(rope), free.booked(rope));
    }

    private List<Position.Coming> coming(Rope rope) {
        return onOrder.stream()
                .filter(order -> order.rope().equals(rope.id()))
                .map(order -> new Position.Coming(
                        order.id(), lateness.from(order, day), order.usable().times(order.quantity())))
                .toList();
    }
}
