package bitterend.work.plans;

import bitterend.exchange.Shop;
import bitterend.exchange.Supplies;
import bitterend.market.OnOrder;
import bitterend.packing.WorkingDays;
import bitterend.packing.explain.LateRope;
import bitterend.packing.explain.LateRope.Planned;
import bitterend.packing.strategy.AheadPlanner;
import bitterend.work.Plans;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import bitterend.work.Watcher;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What would be left undone if rope on order came later: a question that plans twice, each time as the day is planned, in half
 * of the time, and writes nothing.
 */
public final class AskLate {
    private final ShopNow shop;
    private final Plans plans;

    public AskLate(ShopNow shop, Plans plans) {
        this.shop = shop;
        this.plans = plans;
    }

    /**
     * What is asked.
     *
     * @param day what is planned
     * @param late by how many working days each of these orders of rope would be expected later
     */
    public record Request(PlanDay.Request day, Map<String, Integer> late) {
        public Request {
            late = Map.copyOf(late);
        }
    }

    /** What comes of it. */
    public sealed interface Result {
        /** The answer. */
        record Answered(LateRope late) implements Result {}

        /** Nothing is to come of an order of this number; these are the numbers of those that are on order. */
        record NotOnOrder(String number, List<String> numbers) implements Result {
            public NotOnOrder {
                numbers = List.copyOf(numbers);
            }
        }

        /** What is at the bench, or an earlier plan, is not one to hold to. */
        record NotAsked(List<Verdict.Refused> refused) implements Result {
            public NotAsked {
                refused = List.copyOf(refused);
            }
        }
    }

    /** Plans the day as it is and with the delay. */
    public Result ask(Request request, PlanSearch search, Watcher watcher) {
        List<String> numbers =
                shop.shop().supplies().onOrder().stream().map(OnOrder::id).toList();
        Set<String> unknown = new TreeSet<>(request.late().keySet());
        numbers.forEach(unknown::remove);
        if (!unknown.isEmpty()) {
            return new Result.NotOnOrder(unknown.iterator().next(), numbers);
        }
        PlanDay.Asked now = new PlanDay(shop, plans).ask(request.day());
        PlanDay.Asked then = new PlanDay(later(request), plans).ask(request.day());
        if (now instanceof PlanDay.Asked.Ready today && then instanceof PlanDay.Asked.Ready late) {
            PlanSearch half = search.halved();
            return new Result.Answered(LateRope.of(
                    planned(today.question(), half, watcher),
                    planned(late.question(), half.since(System.nanoTime()), watcher),
                    customers()));
        }
        return new Result.NotAsked(now instanceof PlanDay.Asked.NotHeldTo not ? not.refused() : List.of());
    }

    private static Planned planned(DayQuestion question, PlanSearch search, Watcher watcher) {
        AheadPlanner.Planned planned = search.ahead(question, watcher);
        return new Planned(planned.problem(), planned.plan());
    }

    /** The shop where these orders of rope are expected later; one that is overdue, later than today. */
    private ShopNow later(Request request) {
        Shop now = shop.shop();
        WorkingDays working = new WorkingDays(now.settings().calendar());
        LocalDate today = request.day().day();
        List<OnOrder> orders = now.supplies().onOrder().stream()
                .map(order -> {
                    LocalDate from = order.expected().isBefore(today) ? today : order.expected();
                    int days = request.late().getOrDefault(order.id(), 0);
                    return days == 0 ? order : order.expectedOn(working.after(working.firstFrom(from), days));
                })
                .toList();
        Supplies supplies = now.supplies();
        return new ShopNow(
                shop.at(),
                new Shop(
                        now.settings(),
                        now.catalogue(),
                        now.orders(),
                        now.reels(),
                        now.pins(),
                        supplies.expecting(orders),
                        now.customers(),
                        now.digests(),
                        now.leftOut()),
                shop.rack(),
                shop.mark());
    }

    private Map<String, String> customers() {
        Map<String, String> customers = new HashMap<>();
        shop.shop()
                .orders()
                .forEach(line -> customers.putIfAbsent(
                        line.assembly().ordered().source().order(),
                        line.assembly().ordered().customer()));
        return customers;
    }
}
