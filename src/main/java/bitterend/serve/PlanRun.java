package bitterend.serve;

import bitterend.packing.Effort;
import bitterend.packing.strategy.EffortLevel;
import bitterend.work.Plans;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import bitterend.work.plans.DayQuestion;
import bitterend.work.plans.PlanDay;
import bitterend.work.plans.PlanSearch;
import bitterend.work.plans.PlannedDay;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;

/**
 * A plan that is being made while people look on: its best so far by rope, and a stop that keeps it. What it ends with is
 * looked at before anybody puts it in force.
 */
final class PlanRun {
    private static final long SEED = 1;

    private final String id = Keys.random();
    private final ShopNow shop;
    private final PlanDay verb;
    private final DayQuestion question;
    private final AtomicBoolean stop = new AtomicBoolean();
    private final Map<String, Effort.Progress> progress = new LinkedHashMap<>();
    private @Nullable PlannedDay planned;
    private String fault = "";

    /** What of a question is ready to be planned. */
    PlanRun(ShopNow shop, PlanDay verb, DayQuestion question) {
        this.shop = shop;
        this.verb = verb;
        this.question = question;
    }

    /** A question about the day, or why there is none. */
    static Optional<PlanRun> about(ShopNow shop, Plans plans) {
        PlanDay verb = new PlanDay(shop, plans);
        return verb.ask(PlanDay.Request.of(Loft.day(shop))) instanceof PlanDay.Asked.Ready ready
                ? Optional.of(new PlanRun(shop, verb, ready.question()))
                : Optional.empty();
    }

    /** Looks for the plan; returns once it is there. */
    void work() {
        try {
            PlanSearch search = PlanSearch.of(EffortLevel.QUICK, EffortLevel.QUICK.time(), SEED);
            PlannedDay made = verb.plan(question, search, new Watcher(stop::get, this::better));
            synchronized (this) {
                planned = made;
            }
        } catch (RuntimeException | Error wrong) {
            synchronized (this) {
                fault = Wrong.sentence(wrong);
            }
        }
    }

    /** What a page calls it that shows it: nobody puts in force, stops or throws away what he has not looked at. */
    String id() {
        return id;
    }

    private synchronized void better(Effort.Progress best) {
        progress.put(best.ropes(), best);
    }

    /** The best so far is good enough. */
    void stop() {
        stop.set(true);
    }

    synchronized Map<String, Effort.Progress> progress() {
        return new LinkedHashMap<>(progress);
    }

    synchronized Optional<PlannedDay> planned() {
        return Optional.ofNullable(planned);
    }

    synchronized String fault() {
        return fault;
    }

    ShopNow shop() {
        return shop;
    }

    PlanDay verb() {
        return verb;
    }

    DayQuestion question() {
        return question;
    }
}
