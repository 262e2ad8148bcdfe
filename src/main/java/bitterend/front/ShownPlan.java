package bitterend.front;

import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanJson;
import bitterend.exchange.WeekJson;
import bitterend.finding.CommandWord;
import bitterend.finding.Findings;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.report.Figures;
import bitterend.report.PlanMark;
import bitterend.report.PlanPage;
import bitterend.report.PlanTables;
import bitterend.report.PlanView;
import bitterend.report.Tape;
import bitterend.report.page.Document;
import bitterend.report.table.DataTable;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import bitterend.work.plans.BenchTime;
import bitterend.work.plans.FirstFit;
import bitterend.work.plans.PlanBefore;
import bitterend.work.plans.PlannedDay;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A plan as people are shown it: on one screen, whole, or a part of it. */
public final class ShownPlan {
    private final ShopNow now;
    private final Figures figures;
    private final PlanDocument kept;
    private final PlanView view;
    private final PlanPage pages;
    private final Asking asking;

    /**
     * How a front asks for more of a plan.
     *
     * @param commands whether by commands that are named on the page
     * @param sheets the address of the sheets of a day; empty where there is none
     */
    public record Asking(boolean commands, Function<LocalDate, String> sheets) {
        /** By commands alone. */
        public static final Asking BY_COMMANDS = new Asking(true, day -> "");
    }

    /**
     * Which plan is shown.
     *
     * @param problem the question that it answers
     * @param kept the plan as it is kept
     * @param claiming the same with no more claimed of it than was confirmed
     */
    public record Which(PackingProblem problem, PlanDocument kept, CutPlan claiming) {
        /** One that went through the gate. */
        public static Which of(Verdict.Passed passed) {
            return new Which(passed.problem(), passed.kept().document(), passed.plan());
        }

        /** One that was just made, as it is kept now. */
        public static Which of(PlannedDay made, PlanDocument kept) {
            return new Which(made.problem(), kept, made.claiming());
        }
    }

    /** That plan of a shop. */
    public ShownPlan(ShopNow now, Which which, Figures figures, Tape tape, Asking asking) {
        PackingProblem problem = which.problem();
        kept = which.kept();
        this.asking = asking;
        this.now = now;
        this.figures = figures;
        view = PlanViews.of(now.shop(), problem, which.claiming(), figures.units())
                .timed(BenchTime.of(now, problem, kept.plan()))
                .since(new PlanBefore(now, now.at().plans(new Findings())).since(kept, problem))
                .marked(PlanMark.of(kept.number()).out(out(now, kept.number())));
        pages = new PlanPage(figures, tape);
    }

    private static Set<String> out(ShopNow now, int number) {
        return number == 0 ? Set.of() : now.at().plans(new Findings()).issuedReels(number);
    }

    /** What comes first; below it how to ask for the rest, where the plan can be asked for. */
    public Document screen() {
        return below(pages.screen(view, more()));
    }

    /** The same for a page that has a list of its own of what to splice and measure first. */
    public Document screenBesideFirsts() {
        return below(pages.screenBesideFirsts(view, more()));
    }

    private String more() {
        return view.mark().number() == 0 || !asking.commands()
                ? ""
                : "Every cut (or week, changes, reasons, money, a reel): bitterend show "
                        + CommandWord.of(now.at().named()) + " tables";
    }

    /** All of it. */
    public Document whole() {
        return below(pages.of(compared()));
    }

    /** One part; nothing for a word that names neither a part nor a reel of the plan. */
    public Optional<Document> part(String word) {
        return switch (word) {
            case "tables" -> Optional.of(below(pages.tables(view)));
            case "reasons" -> Optional.of(below(pages.reasons(view)));
            case "changes" -> Optional.of(below(pages.changes(view)));
            case "week" -> Optional.of(below(pages.week(view, sheetsOfADay(), asking.sheets())));
            case "money" -> Optional.of(below(pages.money(compared())));
            default -> pages.reel(view, word).map(this::below);
        };
    }

    /** Its tables for a spreadsheet, what its reels cost among them or not. */
    public List<DataTable> tables(boolean money) {
        return new PlanTables(figures).of(view, money);
    }

    private String sheetsOfADay() {
        return view.nextDay()
                .filter(day -> asking.commands())
                .map(day -> "The sheets of a day: bitterend sheet "
                        + CommandWord.of(now.at().named()) + " --day " + day)
                .orElse("");
    }

    /** A part for programs: the plan as it is kept, but of the week and of what changed that alone. */
    public String json(@Nullable String part) {
        if ("week".equals(part)) {
            return WeekJson.text(kept.number(), view.problem(), view.week(), view.hours());
        }
        return "changes".equals(part)
                ? view.since()
                        .map(since -> PlanJson.changes(kept.number(), since))
                        .orElseGet(() -> PlanJson.text(kept))
                : PlanJson.text(kept);
    }

    private PlanView compared() {
        return view.beside(FirstFit.of(view.problem()));
    }

    /** Below what changed of cut pieces since. */
    private Document below(Document page) {
        return OrdersNow.top(now, view.plan().day(), figures).then(page);
    }
}
