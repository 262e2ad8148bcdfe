package bitterend.work;

import bitterend.demand.Piece;
import bitterend.exchange.Shop;
import bitterend.history.PastOrder;
import bitterend.market.Offer;
import bitterend.market.UsualLateness;
import bitterend.measure.Length;
import bitterend.packing.Brake;
import bitterend.packing.WorkingDays;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/** What a shop keeps for urgent work that nobody knows of yet, by its past orders and the leads of its offers. */
public final class UrgentReserve {
    private static final int WORKING_DAYS_OF_A_WEEK = 5;

    private final Shop shop;
    private final WorkingDays working;

    private UrgentReserve(Shop shop) {
        this.shop = shop;
        working = new WorkingDays(shop.settings().calendar());
    }

    /** By what the shop has and asks for on a day. */
    public static Brake.Terms of(Shop shop, LocalDate day) {
        UrgentReserve reserve = new UrgentReserve(shop);
        return new Brake.Terms(shop.settings().brake(), reserve.urgentADay(), reserve.offered(day));
    }

    /** The mean of a working day of the past, rounded up. */
    private Map<String, Length> urgentADay() {
        int days = shop.supplies().history().weeks().size() * WORKING_DAYS_OF_A_WEEK;
        Map<String, Length> all = new HashMap<>();
        shop.supplies().history().weeks().stream()
                .flatMap(week -> week.orders().stream())
                .forEach(order -> order.pieces().stream()
                        .filter(piece -> isUrgent(order, piece))
                        .forEach(piece -> all.merge(piece.orderedRope(), piece.cut(), Length::plus)));
        all.replaceAll((rope, length) -> new Length(-Math.floorDiv(-length.mm(), days)));
        return all;
    }

    /** Of the first priority, and placed a working day before it had to be cut at most. */
    private boolean isUrgent(PastOrder order, Piece piece) {
        return piece.source().priority() == 1
                && !piece.ownRope()
                && !working.cutBy(piece).isAfter(working.after(order.day(), 1));
    }

    /** The first day on which a reel of each rope is counted on that is ordered today. */
    private Map<String, LocalDate> offered(LocalDate day) {
        Map<String, LocalDate> offered = new HashMap<>();
        UsualLateness lateness = ComingReels.lateness(shop);
        for (Offer offer : shop.market(day).offered()) {
            LocalDate there = working.ahead(
                    day.plusDays(offer.terms().lead().days()),
                    lateness.of(offer.supplier()).late());
            offered.merge(offer.rope(), there, (one, other) -> one.isBefore(other) ? one : other);
        }
        return offered;
    }
}
