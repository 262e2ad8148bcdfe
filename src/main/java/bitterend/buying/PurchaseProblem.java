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
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Turns what can be had into reels of a packing problem. Each offer is packed as a rope of its own at each of its prices, so
 * that its reels are valued by the price paid for them; a piece may come off it when it may come off that rope and the reel
 * comes in time. Rope that is there or on its way is worth no more than what it costs to replace it.
 */
final class PurchaseProblem {
    private static final String COMMITTED = ", committed";

    private final Orders orders;
    private final List<Tier> tiers;
    private final Set<String> late;
    private final Aim aim;
    private final WorkingDays working;

    /**
     * @param tiers what may be bought
     * @param late pieces for which rope may come after they are due, since none comes before
     * @param aim how what is not paid now is weighed
     */
    PurchaseProblem(Orders orders, List<Tier> tiers, Set<String> late, Aim aim) {
        this.orders = orders;
        this.tiers = tiers;
        this.late = late;
        this.aim = aim;
        working = new WorkingDays(orders.day().calendar());
    }

    /** The packing problem of some pieces with the reels that may be bought. */
    PackingProblem problem(List<Piece> pieces, Limits limits) {
        PackingProblem day = orders.day();
        Map<String, Rope> ropes = new HashMap<>(day.ropes());
        Map<String, StockValue> values = new HashMap<>();
        day.values().keySet().forEach(rope -> values.put(rope, aim.of(orders.replaced(rope))));
        List<Reel> reels = new ArrayList<>(day.reels());
        for (OnOrder coming : orders.onOrder()) {
            ropes.put(coming.marking(), day.rope(coming.rope()).named(coming.marking()));
            values.put(coming.marking(), aim.of(orders.replaced(coming.rope())));
            for (int n = 1; n <= coming.quantity(); n++) {
                reels.add(reel(coming, n));
            }
        }
        for (Tier tier : tiers) {
            int committed = limits.committed().of(tier.id());
            int free = Math.min(limits.mostOf(tier) - committed, takers(tier.offer(), pieces));
            add(tier, committed, true, ropes, values, reels);
            add(tier, free, false, ropes, values, reels);
        }
        return day.about(pieces.stream()
                        .map(piece -> withChoices(piece, ropes.keySet()))
                        .toList())
                .withEarlier(Map.of())
                .withPrices(aim.of(day.prices()))
                .withRack(ropes, values, reels);
    }

    /** What a reel of such a packing would be bought as; nothing for other reels. */
    Optional<Tier> tierOf(Reel reel) {
        return tiers.stream()
                .filter(tier ->
                        reel.rope().equals(tier.marking()) || reel.rope().equals(tier.marking() + COMMITTED))
                .findFirst();
    }

    /** Whether a reel of such a packing is bought even if it is not cut. */
    static boolean isCommitted(Reel reel) {
        return reel.rope().endsWith(COMMITTED);
    }

    /** The worth of a reel at this price. */
    PaidValue value(Tier tier, boolean committed) {
        Offer offer = tier.offer();
        return new PaidValue(aim, orders.worth(offer.rope()), tier.each(), tier.price(), offer.usable(), committed);
    }

    private void add(
            Tier tier,
            int count,
            boolean committed,
            Map<String, Rope> ropes,
            Map<String, StockValue> values,
            List<Reel> reels) {
        if (count <= 0) {
            return;
        }
        String rope = tier.marking() + (committed ? COMMITTED : "");
        ropes.put(rope, orders.day().rope(tier.offer().rope()).named(rope));
        values.put(rope, value(tier, committed));
        for (int n = 1; n <= count; n++) {
            reels.add(reel(tier.offer(), rope, n));
        }
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
            tiers.stream()
                    .filter(tier ->
                            tier.offer().rope().equals(choice.rope()) && inTime(piece, orders.countedOn(tier.offer())))
                    .flatMap(tier -> Stream.of(tier.marking(), tier.marking() + COMMITTED))
                    .filter(ropes::contains)
                    .forEach(rope -> choices.add(new Piece.RopeChoice(rope, choice.cut())));
        }
        return piece.onAnyOf(choices);
    }

    private boolean inTime(Piece piece, LocalDate there) {
        return late.contains(piece.id()) || !there.isAfter(working.cutBy(piece));
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
