package bitterend.buying;

import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.stock.Held;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Rope on the rack that is there for the orders in hand and for those to come: sound, in stretches that are worth keeping. What is
 * kept for an order counts as far as that order has something booked; reels on hold, past their day or a customer's own do not.
 */
public final class FreeRope {
    private final List<Reel> reels;
    private final List<Piece> open;
    private final LocalDate day;

    /**
     * @param reels on the rack
     * @param open what is ordered and not cut
     * @param day it is asked for
     */
    public FreeRope(List<Reel> reels, List<Piece> open, LocalDate day) {
        this.reels = List.copyOf(reels);
        this.open = List.copyOf(open);
        this.day = day;
    }

    /** What is ordered and not cut of a rope, with the loss of every cut; a customer's own rope is none of it. */
    public Length booked(Rope rope) {
        return booked(rope, "");
    }

    /** The same of one order, or of all where none is named. */
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

    /** Of a rope, all reels together. */
    public Length of(Rope rope) {
        Map<String, Length> wanted = new HashMap<>();
        return reels.stream()
                .filter(reel -> reel.rope().equals(rope.id()) && mayBeCut(reel))
                .map(reel -> free(rope, reel, wanted))
                .reduce(Length.ZERO, Length::plus);
    }

    /** Its stretches, for whoever lays pieces on them; what is kept for an order is among them where that has something booked. */
    public List<Length> stretches(Rope rope) {
        return reels.stream()
                .filter(reel -> reel.rope().equals(rope.id()) && mayBeCut(reel))
                .flatMap(reel -> stretches(rope, reel))
                .toList();
    }

    private Stream<Length> stretches(Rope rope, Reel reel) {
        if (reel.custody().isReserved()) {
            return isBooked(rope, reel.custody().order()) ? runs(rope, reel, Length.ZERO) : Stream.empty();
        }
        Length held = reel.custody().heldOn(day).stream()
                .filter(each -> !isBooked(rope, each.name()))
                .map(Held::length)
                .reduce(Length.ZERO, Length::plus);
        return runs(rope, reel, held);
    }

    private boolean isBooked(Rope rope, String order) {
        return !order.isEmpty() && booked(rope, order).isPositive();
    }

    private boolean mayBeCut(Reel reel) {
        return !reel.custody().isCustomersOwn()
                && !reel.custody().isOnHold()
                && !reel.papers().useBy().isBefore(day);
    }

    /** Of a reel that is kept for an order as much as that order wants; else what is not held, and what is held for such. */
    private Length free(Rope rope, Reel reel, Map<String, Length> wanted) {
        if (reel.custody().isReserved()) {
            return taken(rope, reel.custody().order(), usable(rope, reel, Length.ZERO), wanted);
        }
        Length held = Length.ZERO;
        Length ofOrders = Length.ZERO;
        for (Held each : reel.custody().heldOn(day)) {
            held = held.plus(each.length());
            ofOrders = ofOrders.plus(taken(rope, each.name(), each.length(), wanted));
        }
        return usable(rope, reel, held).plus(ofOrders);
    }

    /** As much of a length as an order still wants of it, other reels having been counted for it before. */
    private Length taken(Rope rope, String order, Length length, Map<String, Length> wanted) {
        Length still = wanted.computeIfAbsent(order, name -> name.isEmpty() ? Length.ZERO : booked(rope, name));
        Length taken = Length.min(length, still);
        wanted.put(order, still.minus(taken));
        return taken;
    }

    /** Certain rope without flaws, in stretches that are worth keeping. */
    private static Length usable(Rope rope, Reel reel, Length held) {
        return runs(rope, reel, held).reduce(Length.ZERO, Length::plus);
    }

    private static Stream<Length> runs(Rope rope, Reel reel, Length held) {
        return reel.holding(held).runs().stream()
                .map(Run::length)
                .filter(length -> !length.isShorterThan(rope.worth().keepFrom()));
    }
}
