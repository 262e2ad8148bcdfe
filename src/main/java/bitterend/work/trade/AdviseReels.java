package bitterend.work.trade;

import bitterend.buying.Advice;
import bitterend.buying.Assumed;
import bitterend.buying.Buyer;
import bitterend.buying.Orders;
import bitterend.buying.SharedTime;
import bitterend.buying.Spending;
import bitterend.catalogue.Rope;
import bitterend.exchange.Settings;
import bitterend.exchange.Shop;
import bitterend.market.OnOrder;
import bitterend.market.UsualLateness;
import bitterend.measure.Length;
import bitterend.packing.Effort;
import bitterend.packing.strategy.EffortLevel;
import bitterend.packing.strategy.FullStrategy;
import bitterend.stock.worth.PastCuts;
import bitterend.work.ComingReels;
import bitterend.work.DayProblem;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import bitterend.work.plans.ForecastShortage;
import bitterend.work.plans.ForecastShortage.Forecast;
import bitterend.work.plans.PlanSearch;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Which reels to buy for what is ordered and not cut: a question that writes nothing. */
public final class AdviseReels {
    /** The days ahead are planned no longer than this. */
    private static final Duration FORECAST = Duration.ofSeconds(5);

    /** Hundredths of the time that are kept for it. */
    private static final int FOR_FORECAST = 20;

    private final ShopNow now;
    private final Shop shop;

    public AdviseReels(ShopNow shop) {
        now = shop;
        this.shop = shop.shop();
    }

    /**
     * What is asked.
     *
     * @param day the day reels would be ordered
     * @param time search for ways to buy and plan the days ahead no longer than this together
     * @param seed of every random choice
     * @param threads ropes looked at side by side
     * @param spending how far the shop may go; what its settings say where nothing else is asked
     */
    public record Request(LocalDate day, Duration time, long seed, int threads, Spending spending) {}

    /** What comes of it. */
    public sealed interface Result {
        /** The ways to buy, what they were found for and rest on, and on which of the days ahead rope is short without. */
        record Advised(Orders orders, Advice advice, Assumed assumed, Forecast forecast) implements Result {
            /** Whether all work that is ordered would be planned, within the budget. */
            public boolean isWhole() {
                return advice.unheld().isEmpty()
                        && advice.best().unplanned().isEmpty()
                        && advice.unpaid().isEmpty();
            }
        }

        /** Nobody offers anything. */
        record NothingOffered() implements Result {}
    }

    /** The advice. */
    public Result advise(Request request, Watcher watcher) {
        if (!isOffered(shop)) {
            return new Result.NothingOffered();
        }
        SharedTime time = SharedTime.fromNow(request.time());
        Orders orders = new Orders(
                DayProblem.serving(shop, now.open(request.day())),
                countedOn(request.day()),
                shop.market(request.day()),
                ComingReels.lateness(shop));
        Effort effort = new Effort(
                time.keeping(FOR_FORECAST),
                Long.MAX_VALUE,
                request.seed(),
                request.threads(),
                watcher.stop(),
                watcher.progress());
        Advice advice =
                new Buyer(orders, FullStrategy.at(EffortLevel.QUICK), effort, request.spending(), weekly()).advise();
        return new Result.Advised(orders, advice, assumed(request), forecast(request, time.left(), watcher));
    }

    private Assumed assumed(Request request) {
        Settings settings = shop.settings();
        return new Assumed(
                request.time(),
                request.spending(),
                settings.holding().interest(),
                settings.holding().room(),
                settings.lateness());
    }

    /** What work took of each rope in a week of the past, cut losses included; ropes without a past are left out. */
    private Map<String, Length> weekly() {
        Map<String, Length> weekly = new TreeMap<>();
        for (Rope rope : shop.catalogue().ropes()) {
            List<List<Length>> byWeek = shop.supplies().history().cutsOf(rope.id());
            List<Length> cuts = byWeek.stream().flatMap(List::stream).toList();
            if (!cuts.isEmpty()) {
                weekly.put(
                        rope.id(),
                        PastCuts.of(cuts, rope.cutting().loss(), byWeek.size(), PastCuts.Source.HISTORY)
                                .weekly());
            }
        }
        return weekly;
    }

    private Forecast forecast(Request request, Duration left, Watcher watcher) {
        Duration time = left.compareTo(FORECAST) < 0 ? left : FORECAST;
        return new ForecastShortage(now)
                .forecast(
                        new ForecastShortage.Request(request.day(), null),
                        PlanSearch.of(EffortLevel.QUICK, time, request.seed()).on(request.threads()),
                        watcher);
    }

    /** Rope that comes is counted on from the day on which plans count on it. */
    private List<OnOrder> countedOn(LocalDate day) {
        UsualLateness lateness = ComingReels.lateness(shop);
        return shop.supplies().onOrder().stream()
                .map(order -> order.expectedOn(lateness.from(order, day)))
                .toList();
    }

    /** Whether there is anything to choose from. */
    public static boolean isOffered(Shop shop) {
        return !shop.supplies().offers().isEmpty();
    }
}
