package bitterend.work.trade;

import bitterend.buying.Advice;
import bitterend.buying.Buyer;
import bitterend.buying.Orders;
import bitterend.exchange.Shop;
import bitterend.market.OnOrder;
import bitterend.market.UsualLateness;
import bitterend.packing.Effort;
import bitterend.packing.strategy.EffortLevel;
import bitterend.packing.strategy.FullStrategy;
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

/** Which reels to buy for what is ordered and not cut: a question that writes nothing. */
public final class AdviseReels {
    /** The days ahead are planned no longer than this. */
    private static final Duration FORECAST = Duration.ofSeconds(5);

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
     * @param time search no longer than this
     * @param seed of every random choice
     * @param threads ropes looked at side by side
     */
    public record Request(LocalDate day, Duration time, long seed, int threads) {}

    /** What comes of it. */
    public sealed interface Result {
        /** The best set of reels, what it was found for, and on which of the days ahead rope is short without it. */
        record Advised(Orders orders, Advice advice, Forecast forecast) implements Result {
            /** Whether all work that is ordered would be planned. */
            public boolean isWhole() {
                return advice.unheld().isEmpty() && advice.best().unplanned().isEmpty();
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
        Orders orders = new Orders(
                DayProblem.serving(shop, now.open(request.day())),
                countedOn(request.day()),
                shop.supplies().offers());
        Effort effort = new Effort(
                request.time(), Long.MAX_VALUE, request.seed(), request.threads(), watcher.stop(), watcher.progress());
        Advice advice = new Buyer(orders, FullStrategy.at(EffortLevel.QUICK), effort).advise();
        return new Result.Advised(orders, advice, forecast(request, watcher));
    }

    private Forecast forecast(Request request, Watcher watcher) {
        Duration time = request.time().compareTo(FORECAST) < 0 ? request.time() : FORECAST;
        return new ForecastShortage(now)
                .forecast(
                        new ForecastShortage.Request(request.day(), null),
                        PlanSearch.of(EffortLevel.QUICK, time, request.seed()),
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
