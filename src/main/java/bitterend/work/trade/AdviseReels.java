package bitterend.work.trade;

import bitterend.buying.Advice;
import bitterend.buying.Buyer;
import bitterend.buying.OnOrder;
import bitterend.buying.Orders;
import bitterend.buying.UsualLateness;
import bitterend.exchange.Shop;
import bitterend.packing.Effort;
import bitterend.packing.strategy.EffortLevel;
import bitterend.packing.strategy.FullStrategy;
import bitterend.work.ComingReels;
import bitterend.work.DayProblem;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;

/** Which reels to buy for the orders in hand: a question that writes nothing. */
public final class AdviseReels {
    private final Shop shop;

    public AdviseReels(ShopNow shop) {
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
        /** The best set of reels, and what it was found for. */
        record Advised(Orders orders, Advice advice) implements Result {
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
                DayProblem.serving(shop, DayProblem.of(shop, request.day())),
                countedOn(request.day()),
                shop.supplies().offers());
        Effort effort = new Effort(
                request.time(), Long.MAX_VALUE, request.seed(), request.threads(), watcher.stop(), watcher.progress());
        return new Result.Advised(orders, new Buyer(orders, FullStrategy.at(EffortLevel.QUICK), effort).advise());
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
