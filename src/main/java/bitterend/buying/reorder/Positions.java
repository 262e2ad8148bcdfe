package bitterend.buying.reorder;

import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.market.OnOrder;
import bitterend.market.UsualLateness;
import bitterend.measure.Length;
import bitterend.stock.Held;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.time.LocalDate;
import java.util.List;

/** What there is of each rope against what is booked, on a day. */
public final class Positions {
    private final List<Reel> reels;
    private final List<Piece> open;
    private final List<OnOrder> onOrder;
    private final UsualLateness lateness;
    private final LocalDate day;

    /**
     * @param reels on the rack
     * @param open what is ordered and not cut
     * @param onOrder reels on their way
     */
    public Positions(List<Reel> reels, List<Piece> open, List<OnOrder> onOrder, UsualLateness lateness, LocalDate day) {
        this.reels = List.copyOf(reels);
        this.open = List.copyOf(open);
        this.onOrder = List.copyOf(onOrder);
        this.lateness = lateness;
        this.day = day;
    }

    /** Of one rope. */
    public Position of(Rope rope) {
        return new Position(free(rope), coming(rope), booked(rope, ""));
    }

    /** What is ordered and not cut of a rope, with the loss of every cut; of one order, or of all where none is named. */
    private Length booked(Rope rope, String order) {
        List<Length> cuts = open.stream()
                .filter(piece -> piece.orderedRope().equals(rope.id()) && !piece.ownRope())
                .filter(piece -> order.isEmpty() || piece.source().order().equals(order))
                .map(Piece::cut)
                .toList();
        return cuts.stream()
                .reduce(Length.ZERO, Length::plus)
                .plus(rope.cutting().loss().times(cuts.size()));
    }

    private Length free(Rope rope) {
        return reels.stream()
                .filter(reel -> reel.rope().equals(rope.id()) && mayBeCut(reel))
                .map(reel -> free(rope, reel))
                .reduce(Length.ZERO, Length::plus);
    }

    private boolean mayBeCut(Reel reel) {
        return !reel.custody().isCustomersOwn()
                && !reel.custody().isOnHold()
                && !reel.papers().useBy().isBefore(day);
    }

    /** Of a reel that is kept for an order as much as that order has booked; else what is not held, and what is held for such. */
    private Length free(Rope rope, Reel reel) {
        if (reel.custody().isReserved()) {
            return Length.min(
                    usable(rope, reel, Length.ZERO), booked(rope, reel.custody().order()));
        }
        Length held = Length.ZERO;
        Length wanted = Length.ZERO;
        for (Held each : reel.custody().heldOn(day)) {
            held = held.plus(each.length());
            wanted = wanted.plus(Length.min(each.length(), booked(rope, each.name())));
        }
        return usable(rope, reel, held).plus(wanted);
    }

    /** Certain rope without flaws, in stretches that are worth keeping. */
    private static Length usable(Rope rope, Reel reel, Length held) {
        return reel.holding(held).runs().stream()
                .map(Run::length)
                .filter(length -> !length.isShorterThan(rope.worth().keepFrom()))
                .reduce(Length.ZERO, Length::plus);
    }

    private List<Position.Coming> coming(Rope rope) {
        return onOrder.stream()
                .filter(order -> order.rope().equals(rope.id()))
                .map(order -> new Position.Coming(
                        order.id(), lateness.from(order, day), order.usable().times(order.quantity())))
                .toList();
    }
}
