package bitterend.serve;

import bitterend.finding.Findings;
import bitterend.front.ChangeWords;
import bitterend.report.DueWords;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.report.FirstArticle;
import bitterend.report.PlanMark;
import bitterend.report.page.Document;
import bitterend.report.page.Ink;
import bitterend.report.page.Wording;
import bitterend.report.page.Writing;
import bitterend.report.sheet.PagePart;
import bitterend.work.KeepPlan.Outcome;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import bitterend.work.plans.PlannedDay;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The plan in force, and one button that makes the next: looked at beside the one in force before it takes its place. */
final class TodayScreen implements Screen {
    /** What who taps on a page of a run before this one is told. */
    private static final String OTHER_RUN =
            "The plan of that page is no longer here: another was made since, it was put in force or thrown away, or the program"
                    + " was started anew. Look at the plan that is here now, or plan again. Nothing was put in force.";

    private final Loft loft;
    private final Site site;
    private final Runs runs;
    private final People people;
    private final RunPage page;
    private @Nullable PlanRun run;

    TodayScreen(Loft loft, Site site, People people, Runs runs) {
        this.loft = loft;
        this.site = site;
        this.runs = runs;
        this.people = people;
        page = new RunPage(site, "A new plan", "/plan", "/", "Looking for a better plan.", "Stop, and keep the best");
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get("/", this::show);
        config.routes.post("/plan", request -> loft.whenRead(request, site, now -> begin(request, now)));
        config.routes.get("/plan", this::running);
        config.routes.post("/plan/stop", this::stop);
        config.routes.post("/plan/accept", this::accept);
        config.routes.post("/plan/drop", this::drop);
    }

    private void show(Context request) {
        Map<String, Object> values = new HashMap<>();
        Optional<ShopNow> now = loft.now();
        values.put("findings", now.isPresent() ? "" : errors());
        values.put("kept", loft.access().keepsLedger());
        values.put("running", run().filter(each -> each.run().fault().isEmpty()).isPresent());
        List<FirstArticle> firsts = now.map(this::firsts).orElse(List.of());
        LocalDate today = now.map(Loft::day).orElse(LocalDate.MAX);
        Set<String> cut = now.map(TodayScreen::cut).orElse(Set.of());
        values.put(
                "firsts",
                firsts.stream()
                        .filter(first -> !first.day().isAfter(today))
                        .map(first -> words(first, cut))
                        .toList());
        values.put(
                "later",
                firsts.stream()
                        .filter(first -> first.day().isAfter(today))
                        .map(first -> DueWords.named(first.day()) + ", " + words(first, cut))
                        .toList());
        values.put("blocks", now.flatMap(this::inForce).map(PagePart::blocks).orElse(""));
        site.show(request, "Today", "serve/today.jte", values);
    }

    /** Pieces that are spliced and measured before the others of their kind are cut, since nobody has checked their numbers. */
    private List<FirstArticle> firsts(ShopNow now) {
        Set<String> cut = cut(now);
        return loft
                .inForce(now)
                .flatMap(Verdict::passed)
                .map(passed -> FirstArticle.of(loft.view(now, passed, PlanMark.of(passed.number()))))
                .orElse(List.of())
                .stream()
                .filter(first -> !cut.containsAll(first.all()))
                .toList();
    }

    private static Set<String> cut(ShopNow now) {
        return now.rack().map(rack -> rack.cut().keySet()).orElse(Set.of());
    }

    private static String words(FirstArticle first, Set<String> cut) {
        return first.piece() + (cut.contains(first.piece()) ? ", which is cut" : "") + ": "
                + first.termination() + " on " + first.rope() + "; " + (first.pieces() - 1)
                + (first.pieces() == 2 ? " other waits" : " others wait");
    }

    private String errors() {
        return FindingsPage.text(loft.shelf().read().findings(), Ink.PLAIN);
    }

    private Optional<Document> inForce(ShopNow now) {
        return loft.inForce(now).map(verdict -> {
            Optional<Verdict.Passed> passed = verdict.passed();
            return passed.isPresent()
                    ? loft.shown(now, passed.get()).screenBesideFirsts()
                    : told(verdict instanceof Verdict.Refused refused ? refused.reasons() : List.of());
        });
    }

    private static Document told(List<String> reasons) {
        Writing page = new Writing();
        page.title("The plan in force is not to be cut by");
        reasons.forEach(reason -> page.paragraph(Wording.sentence(reason)));
        return page.document();
    }

    private synchronized Optional<PlanRun> run() {
        return Optional.ofNullable(run);
    }

    private void begin(Context request, ShopNow now) {
        synchronized (this) {
            if (run == null || !run.run().fault().isEmpty()) {
                run = PlanRun.begin(now, now.at().plans(new Findings()), runs).orElse(null);
            }
        }
        Back.to(request, "/plan");
    }

    /** How far it is; then the plan beside the one in force. */
    private void running(Context request) {
        PlanRun now = run().orElse(null);
        if (now == null) {
            Back.to(request, "/");
        } else {
            page.show(request, now.run(), day -> planned(request, now, day));
        }
    }

    private String planned(Context request, PlanRun now, PlannedDay day) {
        Figures figures = loft.figures(now.shop());
        Map<String, Object> values = new HashMap<>();
        values.put("run", now.run().id());
        values.put(
                "changes",
                day.changes().map(since -> ChangeWords.lines(since, figures)).orElse(List.of()));
        values.put("blocks", PagePart.blocks(loft.shown(now.shop(), day).screen()));
        return site.part(request, "serve/planned.jte", values);
    }

    /** The run that a page shows, if it is the one that is here. */
    private synchronized Optional<PlanRun> named(Context request) {
        return run().filter(each -> each.run().id().equals(Sent.text(request, "run")));
    }

    private void other(Context request) {
        request.status(409);
        site.tell(request, OTHER_RUN);
    }

    private void stop(Context request) {
        Optional<PlanRun> shown = named(request);
        if (shown.isEmpty()) {
            other(request);
            return;
        }
        shown.get().run().stop();
        Back.to(request, "/plan");
    }

    private void accept(Context request) {
        String who = people.who(request);
        if (who.isEmpty()) {
            site.tell(request, People.FIRST);
            return;
        }
        Optional<PlanRun> made;
        synchronized (this) {
            made = named(request).filter(each -> each.run().made().isPresent());
            run = made.isPresent() ? null : run;
        }
        if (made.isEmpty()) {
            other(request);
            return;
        }
        Outcome outcome = made.get().verb().keep(made.get().run().made().orElseThrow(), who);
        if (outcome instanceof Outcome.InForce) {
            Back.to(request, "/");
        } else {
            site.tell(request, "The plan could not be written: the one before it is still in force.");
        }
    }

    private void drop(Context request) {
        Optional<PlanRun> shown;
        synchronized (this) {
            shown = named(request);
            run = shown.isPresent() ? null : run;
        }
        if (shown.isEmpty()) {
            other(request);
            return;
        }
        shown.get().run().stop();
        Back.to(request, "/");
    }
}
