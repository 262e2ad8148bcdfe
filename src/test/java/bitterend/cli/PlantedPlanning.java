package bitterend.cli;

import bitterend.packing.PackingProblem;
import bitterend.packing.strategy.GreedyStrategy;
import bitterend.stock.Event;
import bitterend.stock.Ledger;

/** Breaches that the test of the architecture must find: a front plans nothing and books nothing. */
public final class PlantedPlanning {
    private PlantedPlanning() {}

    /** Each of them. */
    public static Class<?>[] all() {
        return new Class<?>[] {PlantedPlanning.class, Booking.class, Asking.class};
    }

    /** A front that keeps a plan by itself. */
    public static Class<?> keeping() {
        return Keeping.class;
    }

    static Object planned(PackingProblem problem, bitterend.packing.Effort effort) {
        return new GreedyStrategy().pack(problem, effort);
    }

    /** Another breach. */
    static final class Booking {
        private Booking() {}

        static void booked(Ledger ledger, Event.Act act) {
            ledger.change(act, books -> {});
        }
    }

    /** Which sheets the plan calls back is forgotten. */
    static final class Keeping {
        private Keeping() {}

        static Object kept(bitterend.work.Plans plans, bitterend.exchange.PlanDocument plan) {
            return new bitterend.work.KeepPlan(plans, "Ada", java.time.Clock.systemUTC())
                    .keep(plan, java.util.List.of());
        }
    }

    /** A third: what is to be cut is made up in the front. */
    static final class Asking {
        private Asking() {}

        static PackingProblem asked(bitterend.exchange.Shop shop) {
            return new bitterend.day.OpenWork(
                            bitterend.work.DayProblem.of(shop, java.time.LocalDate.MIN), bitterend.day.RackToday.NONE)
                    .fresh();
        }
    }
}
