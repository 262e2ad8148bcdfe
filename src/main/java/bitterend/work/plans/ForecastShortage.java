package bitterend.work.plans;

import bitterend.buying.Shortage;
import bitterend.buying.Shortages;
import bitterend.exchange.Shop;
import bitterend.finding.Findings;
import bitterend.packing.Horizon;
import bitterend.packing.PackingProblem;
import bitterend.packing.strategy.DayPlanner;
import bitterend.work.DayProblem;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * On which of the days ahead rope is short, and for whom: a question that writes nothing. All the work of these days is looked
 * at, also what the plan of the day would not cut ahead while rope is short.
 */
public final class ForecastShortage {
    private final ShopNow shop;

    public ForecastShortage(ShopNow shop) {
        this.shop = shop;
    }

    /**
     * What is asked.
     *
     * @param day the day it is
     * @param until pieces that must be cut by this day; null for as far ahead as the shop usually looks
     */
    public record Request(LocalDate day, @Nullable LocalDate until) {}

    /**
     * What comes of it.
     *
     * @param day the day it was asked
     * @param horizon how far it looks ahead
     * @param ropes every rope that anything is ordered in
     */
    public record Forecast(LocalDate day, Horizon horizon, List<Shortage> ropes) {
        public Forecast {
            ropes = List.copyOf(ropes);
        }

        /** Whether all work can be done with the rope that is there and comes. */
        public boolean isEnough() {
            return ropes.stream().noneMatch(Shortage::isShort);
        }
    }

    /** Plans the days ahead for a moment, and reads out of that what is short. */
    public Forecast forecast(Request request, PlanSearch search, Watcher watcher) {
        PlanDay days = new PlanDay(shop, shop.at().plans(new Findings()));
        PlanDay.Request asked = new PlanDay.Request(request.day(), null, null, false, request.until());
        if (!(days.ask(asked) instanceof PlanDay.Asked.Ready ready)) {
            throw new IllegalStateException("no plan to hold to was named");
        }
        PackingProblem problem = ready.question().problem();
        Shop files = shop.shop();
        List<Shortage> ropes = Shortages.of(
                problem,
                new DayPlanner(search.packer()).plan(problem, search.effort(problem, watcher)),
                DayProblem.customers(files));
        return new Forecast(request.day(), problem.horizon(), ropes);
    }
}
