package bitterend.work.trade;

import bitterend.buying.KnotValue;
import bitterend.buying.RackWorth;
import bitterend.buying.Study;
import bitterend.buying.steady.Keeping;
import bitterend.buying.steady.LeadTime;
import bitterend.buying.steady.PastWeeks;
import bitterend.buying.steady.SteadyStudy;
import bitterend.catalogue.Rope;
import bitterend.exchange.Settings;
import bitterend.exchange.Shop;
import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.market.UsualLateness;
import bitterend.packing.ShopCalendar;
import bitterend.stock.StockValue;
import bitterend.work.CoilCurves;
import bitterend.work.ComingReels;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The ropes of a shop that have both an offer and a past, and what coils of them are worth on a rack that is studied. */
final class StudiedRopes {
    private static final int DAYS_OF_A_WEEK = 7;
    private static final int WORKING_DAYS_OF_A_WEEK = 5;

    private final Shop shop;
    private final CoilCurves curves;
    private final Market market;
    private final UsualLateness lateness;

    StudiedRopes(Shop shop, LocalDate day) {
        this.shop = shop;
        curves = new CoilCurves(shop, day);
        market = shop.market(day);
        lateness = ComingReels.lateness(shop);
    }

    /** Their studies, coils being worth what is given for their rope. */
    List<Study> studies(Study.Size size, Predicate<String> meant, Function<Rope, RackWorth> worth) {
        return studied(meant)
                .map(rope -> Study.of(
                        rope,
                        worth.apply(rope),
                        shop.settings().prices(),
                        market.offered(),
                        shop.supplies().history().cutsOf(rope.id()),
                        size))
                .toList();
    }

    /** Studies of a shop in steady state. */
    List<SteadyStudy> steady(Study.Size size, Predicate<String> meant, SteadyStudy.Goal goal) {
        return studied(meant)
                .map(rope -> SteadyStudy.of(
                        rope, PastWeeks.of(shop.supplies().history(), rope.id()), terms(rope, size, goal)))
                .toList();
    }

    /** The ropes of the shop that can be studied. */
    Stream<Rope> studied(Predicate<String> meant) {
        return shop.catalogue().ropes().stream()
                .filter(rope -> meant.test(rope.id()))
                .filter(rope -> isOffered(rope.id()) && hasPast(rope.id()));
    }

    boolean isOffered(String rope) {
        return !market.offered(rope).isEmpty();
    }

    boolean hasPast(String rope) {
        return shop.supplies().history().ropes().contains(rope);
    }

    private SteadyStudy.Terms terms(Rope rope, Study.Size size, SteadyStudy.Goal goal) {
        Settings settings = shop.settings();
        Keeping keeping = new Keeping(
                Math.toIntExact(rope.cutting().loss().mm()),
                settings.prices().opening(),
                settings.prices().changing(),
                settings.holding().interest(),
                settings.holding().room());
        return new SteadyStudy.Terms(
                offer -> where(rope, offer), this::lead, market, keeping, goal, size, market.day());
    }

    /** What coils are worth where this offer is bought: as the shop typed it, else by the coil curve. */
    private RackWorth where(Rope rope, Offer offer) {
        KnotValue typed = shop.supplies().values().typed().get(rope.id());
        return typed == null
                ? RackWorth.of(curves.bought(rope, offer.byMetre(), offer.usable()))
                : RackWorth.always(typed, offer.byMetre());
    }

    /** Later than its supplier says by what is known of the offer, of the supplier, or of all. */
    private LeadTime lead(Offer offer) {
        ShopCalendar.Ahead usual = lateness.of(offer.supplier()).late();
        int late = usual.working()
                ? (usual.days() * DAYS_OF_A_WEEK + WORKING_DAYS_OF_A_WEEK - 1) / WORKING_DAYS_OF_A_WEEK
                : usual.days();
        return LeadTime.of(offer.terms().lead(), late);
    }

    /** By a curve of the shop's own, never more than the cheapest offer by the metre. */
    RackWorth typed(StockValue typed, Rope rope) {
        return market.cheapest(rope.id())
                .map(offer -> RackWorth.always(typed, offer.byMetre()))
                .orElseGet(() -> RackWorth.always(typed));
    }

    /** By the coil curve, where the cheapest offer by the metre is bought. */
    RackWorth coils(Rope rope) {
        return market.cheapest(rope.id())
                .map(offer -> RackWorth.of(curves.bought(rope, offer.byMetre(), offer.usable())))
                .orElseGet(() -> RackWorth.of(curves.of(rope)));
    }
}
