package bitterend.buying;

import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.market.Offer;
import bitterend.market.OnOrder;
import bitterend.measure.Length;
import bitterend.packing.PackingProblem;
import bitterend.packing.WorkingDays;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Turns what can be had into reels of a packing problem. Each offer is packed as a rope of its own, so that its reels are
 * valued by the price paid for them; a piece may come off it when it may come off that rope and the reel comes in time.
 */
final class PurchaseProblem {
    private static final String COMMITTED = ", committed";

    private final Orders orders;
    private final Set<String> late;

    /** {@code late} names pieces for which rope may come after they are due, since none comes before. */
    PurchaseProblem(Orders orders, Set<String> late) {
        this.orders = orders;
        this.late = late;
    }

    /** The packing problem of some pieces with the reels that may be bought. */
    PackingProblem problem(List<Piece> pieces, Limits limits) {
        PackingProblem day = orders.day();
        Map<String, Rope> ropes = new HashMap<>(day.ropes());
        Map<String, StockValue> values = new HashMap<>(day.values());
        List<Reel> reels = new ArrayList<>(day.reels());
        for (OnOrder coming : orders.onOrder()) {
            ropes.put(coming.marking(), day.rope(coming.rope()).named(coming.marking()));
            values.put(coming.marking(), value(coming.rope()));
            for (int n = 1; n <= coming.quantity(); n++) {
                reels.add(reel(coming, n));
            }
        }
        for (Offer offer : orders.plannable()) {
            int committed = limits.committed().of(offer.id());
            int free = Math.min(limits.mostOf(offer) - committed, takers(offer, pieces));
            add(offer, committed, true, ropes, values, reels);
            add(offer, free, false, ropes, values, reels);
        }
        return day.about(pieces.stream()
                        .map(piece -> withChoices(piece, ropes.keySet()))
                        .toList())
                .withEarlier(Map.of())
                .withRack(ropes, values, reels);
    }

    /** The offer a reel of such a packing would be bought from, with what it is worth; nothing for other reels. */
    java.util.Optional<Offer> offerOf(Reel reel) {
        return orders.plannable().stream()
                .filter(offer ->
                        reel.rope().equals(offer.marking()) || reel.rope().equals(offer.marking() + COMMITTED))
                .findFirst();
    }

    /** The worth of a reel of this offer. */
    PaidValue value(Offer offer, boolean committed) {
        return new PaidValue(value(offer.rope()), offer.paid(), offer.usable(), committed);
    }

    private void add(
            Offer offer,
            int count,
            boolean committed,
            Map<String, Rope> ropes,
            Map<String, StockValue> values,
            List<Reel> reels) {
        if (count <= 0) {
            return;
        }
        String rope = offer.marking() + (committed ? COMMITTED : "");
        ropes.put(rope, orders.day().rope(offer.rope()).named(rope));
        values.put(rope, value(offer, committed));
        for (int n = 1; n <= count; n++) {
            reels.add(reel(offer, rope, n));
        }
    }

    private StockValue value(String rope) {
        StockValue value = orders.day().values().get(rope);
        if (value == null) {
            throw new IllegalArgumentException("no value for rope " + rope);
        }
        return value;
    }

    /** No more reels of an offer are drawn from than there are pieces to draw; one shows how long they are. */
    private static int takers(Offer offer, List<Piece> pieces) {
        long takers = pieces.stream()
                .filter(piece -> piece.lengthOn(offer.rope())
                        .filter(cut -> !cut.isLongerThan(offer.usable()))
                        .isPresent())
                .count();
        return (int) Math.max(1, takers);
    }

    private Piece withChoices(Piece piece, Set<String> ropes) {
        if (piece.ownRope()) {
            return piece;
        }
        List<Piece.RopeChoice> choices = new ArrayList<>(piece.choices());
        for (Piece.RopeChoice choice : piece.choices()) {
            orders.onOrder().stream()
                    .filter(coming -> coming.rope().equals(choice.rope()) && inTime(piece, coming.expected()))
                    .forEach(coming -> choices.add(new Piece.RopeChoice(coming.marking(), choice.cut())));
            orders.plannable().stream()
                    .filter(offer -> offer.rope().equals(choice.rope())
                            && inTime(piece, offer.arrives(orders.day().day())))
                    .flatMap(offer -> Stream.of(offer.marking(), offer.marking() + COMMITTED))
                    .filter(ropes::contains)
                    .forEach(rope -> choices.add(new Piece.RopeChoice(rope, choice.cut())));
        }
        return piece.onAnyOf(choices);
    }

    private boolean inTime(Piece piece, LocalDate there) {
        return late.contains(piece.id())
                || !there.isAfter(new WorkingDays(orders.day().calendar()).cutBy(piece));
    }

    private static Reel reel(Offer offer, String rope, int n) {
        return reel(
                rope + " no. " + n,
                rope,
                offer.made().oneLot() ? offer.id() : "",
                offer.usable(),
                offer.made().certificate());
    }

    private static Reel reel(OnOrder coming, int n) {
        return reel(
                coming.marking() + " no. " + n,
                coming.marking(),
                "",
                coming.usable(),
                coming.made().certificate());
    }

    private static Reel reel(String id, String rope, String lot, Length length, String certificate) {
        return new Reel(
                id,
                rope,
                lot,
                new Reel.Contents(length, Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(),
                new Reel.Papers(certificate, "", LocalDate.MAX, LocalDate.MIN),
                Reel.Custody.FREE,
                true,
                Reel.Where.UNKNOWN);
    }
}
