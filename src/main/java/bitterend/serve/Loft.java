package bitterend.serve;

import bitterend.exchange.CountCsv;
import bitterend.exchange.StockText;
import bitterend.exchange.TypedText;
import bitterend.finding.Findings;
import bitterend.front.PlanViews;
import bitterend.front.ShownPlan;
import bitterend.measure.Parsed;
import bitterend.measure.Units;
import bitterend.report.Figures;
import bitterend.report.PlanMark;
import bitterend.report.PlanView;
import bitterend.report.Tape;
import bitterend.work.PlanGate;
import bitterend.work.Plans;
import bitterend.work.ShopAccess;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import bitterend.work.plans.PlannedDay;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;

/** The shop that is served, as every screen asks for it. */
final class Loft {
    /** What is said while the shop cannot be read. */
    static final String BROKEN = "The files of the shop have errors: they are on the screen of today.";

    private final Shelf shelf;
    private final Units units;

    /** @param units system that lengths are printed in */
    Loft(Shelf shelf, Units units) {
        this.shelf = shelf;
        this.units = units;
    }

    ShopAccess access() {
        return shelf.access();
    }

    /** The shop as it is; nothing while its files have errors. */
    Optional<ShopNow> now() {
        return shelf.read().found();
    }

    /** Goes on with the shop as it is; while its files have errors the page says so. */
    void whenRead(Context request, Site site, Consumer<ShopNow> then) {
        now().ifPresentOrElse(then, () -> site.tell(request, BROKEN));
    }

    /** The same in a shop that keeps a ledger; where there is none the page says so. */
    void whenKept(Context request, Site site, Consumer<ShopNow> then) {
        whenRead(request, site, now -> {
            if (access().keepsLedger()) {
                then.accept(now);
            } else {
                site.tell(request, RackScreen.NO_LEDGER);
            }
        });
    }

    /** The same in the name of who asks for it; nobody but who said a name books anything. */
    void whenKnown(Context request, Site site, People people, BiConsumer<ShopNow, String> then) {
        String who = people.who(request);
        if (who.isEmpty()) {
            site.tell(request, People.FIRST);
        } else {
            whenRead(request, site, now -> then.accept(now, who));
        }
    }

    Shelf shelf() {
        return shelf;
    }

    /** How what is typed is understood, as far as the shop says it. */
    TypedText typed() {
        return access().settings().map(TypedText::new).orElse(TypedText.OF_FILES);
    }

    /** A rule for a length, of which a bare figure is in the {@link #unit}. */
    <T> Function<String, Parsed<T>> length(Function<String, Parsed<T>> rule) {
        return typed().figures(text -> rule.apply(StockText.inUnit(text, unit())));
    }

    /** The unit of a bare figure. */
    String unit() {
        return CountCsv.unit(units);
    }

    /** Figures as they are printed here. */
    Figures figures(ShopNow now) {
        return new Figures(units, now.shop().settings().money());
    }

    /** A plan that went through the gate, as it is shown under a mark. */
    PlanView view(ShopNow now, Verdict.Passed passed, PlanMark mark) {
        return PlanViews.of(now.shop(), passed.problem(), passed.plan(), units).marked(mark);
    }

    /** The same as people are shown it; its days lead to their sheets. */
    ShownPlan shown(ShopNow now, Verdict.Passed passed) {
        return shown(now, ShownPlan.Which.of(passed));
    }

    /** A plan that was just made, as people are shown it. */
    ShownPlan shown(ShopNow now, PlannedDay made) {
        return shown(now, ShownPlan.Which.of(made, made.plan()));
    }

    private ShownPlan shown(ShopNow now, ShownPlan.Which which) {
        return new ShownPlan(
                now,
                which,
                figures(now),
                Tape.DRAWN,
                new ShownPlan.Asking(
                        false, day -> which.kept().number() == 0 ? "" : PrintScreen.SHEET + "?day=" + day));
    }

    /** The day that is worked on. */
    static LocalDate day(ShopNow now) {
        return now.today();
    }

    /** The plan in force, if it goes through the gate. */
    Optional<Verdict> inForce(ShopNow now) {
        Plans plans = now.at().plans(new Findings());
        return plans.inForce().flatMap(plans::needed).map(kept -> new PlanGate(now, plans).verdict(kept));
    }
}
