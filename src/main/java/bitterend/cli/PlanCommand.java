package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.day.Morning;
import bitterend.day.RackToday;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFacts;
import bitterend.exchange.PlanFolder;
import bitterend.exchange.PlanJson;
import bitterend.exchange.Shop;
import bitterend.finding.Findings;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.FullStrategy;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.report.PlanMark;
import bitterend.report.PlanPage;
import bitterend.report.PlanView;
import bitterend.report.page.Document;
import bitterend.work.Plans;
import bitterend.work.Verdict;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code plan SHOP}: which piece off which reel, in which order, and what is left. */
@Command(
        name = "plan",
        header = "Plans the day: every piece on a reel, in cutting order.",
        description = {
            "",
            "Prints the plan, gives it the next number and puts it in force. All plans are",
            "kept, in SHOP/plans. Writes nothing when the input has errors (exit code 3).",
            "Exit code 4 when some pieces could not be planned; the plan for the others is",
            "written all the same.",
            ""
        },
        sortOptions = false)
final class PlanCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private EffortOption effort = new EffortOption();

    @Mixin
    private PlanFrom earlier = new PlanFrom();

    @Mixin
    private PlanQuestions questions = new PlanQuestions();

    @Mixin
    private PlanOut out = new PlanOut();

    @Mixin
    private OnTheBenchOption bench = new OnTheBenchOption();

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    PlanCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<String> refusal = questions.isAsked()
                        && (earlier.isNamed() || out.file().isPresent())
                ? Optional.of("--explain and --shares ask a plan that is there; --from, --keep and --out make one")
                : out.refusal(shop.folder);
        if (refusal.isPresent()) {
            terminal.err().println("error: " + refusal.get());
            return ExitCode.BAD_COMMAND_LINE.number();
        }
        Optional<Shop> read = shop.readOrComplain(terminal);
        ExitCode code = read.isEmpty() ? ExitCode.BAD_INPUT : questions.isAsked() ? ask(read.get()) : plan(read.get());
        return code.number();
    }

    private ExitCode ask(Shop read) {
        Findings findings = new Findings();
        Plans plans = shop.plans(findings);
        Optional<PlanFolder.Kept> asked = new PlanChoice(plans).plan(questions.plan, findings);
        terminal.err().print(FindingsPage.text(findings.sorted(), terminal.ink()));
        if (asked.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        GateTold.Passage passage = new GateTold(terminal, shop, plans).pass(asked.get(), read);
        return passage.passed().map(passed -> answered(read, passed, passage)).orElse(passage.code());
    }

    private ExitCode answered(Shop read, Verdict.Passed passed, GateTold.Passage passage) {
        String refusal = questions.refusal(passed.problem(), shop.rack());
        if (!refusal.isEmpty()) {
            terminal.err().println("error: " + refusal);
            return ExitCode.BAD_COMMAND_LINE;
        }
        terminal.err().println("asked: plan " + (passed.number() == 0 ? "without a number" : passed.number()));
        passage.remarks().forEach(remark -> terminal.err()
                .println("since plan " + passed.number() + " was made: "
                        + units.figures(read).sentence(remark.sentence())));
        PlanQuestions.Asked asked = new PlanQuestions.Asked(read, passed, shop.rack(), shop.folder);
        files.show(
                terminal,
                common.json,
                new Answer(() -> questions.json(asked), () -> questions.page(asked, units.figures(read))));
        return ExitCode.DONE;
    }

    private ExitCode plan(Shop read) {
        Findings findings = new Findings();
        Optional<FullStrategy> strategy = effort.strategy(findings);
        Plans plans = shop.plans(findings);
        Optional<PlanFrom.Named> named = earlier.read(new PlanFrom.Reading(terminal, shop, read, plans), findings);
        terminal.err().print(FindingsPage.text(findings.sorted(), terminal.ink()));
        if (strategy.isEmpty() || named.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        tellStale(read);
        PackingProblem day = KeptDraws.pinned(
                morning(read, plans, named.get().from()), named.get().keep());
        Replan replan = new Replan(terminal, day, shop.rack());
        PackingProblem open = replan.open(named.get().from());
        replan.compareWith(plans);
        GateTold gate = new GateTold(terminal, shop, plans);
        PackingProblem held = bench.held(open, terminal, gate, plans, read, units.figures(read));
        return plan(read, replan, held, strategy.get());
    }

    /** Whoever wrote a curve into a file expects it to be used. */
    private void tellStale(Shop read) {
        Set<String> stale = read.supplies().values().learned().keySet();
        if (!stale.isEmpty()) {
            terminal.err()
                    .println("values.json: the curve of " + String.join(", ", stale)
                            + " was learned from the past once; it is stale and not used");
        }
    }

    /** The day's question; coils are worth all day what an earlier plan of the day says they were in the morning. */
    private PackingProblem morning(Shop read, Plans plans, @Nullable PlanDocument from) {
        PackingProblem now = read.problem(day.of(read));
        Optional<PackingProblem> earlier = from == null ? MorningPlan.inForce(plans) : MorningPlan.questionOf(from);
        return earlier.map(before -> Morning.kept(now, before)).orElse(now);
    }

    private ExitCode plan(Shop read, Replan replan, PackingProblem problem, FullStrategy strategy) {
        try (Interrupt interrupt = Interrupt.listening()) {
            ProgressLines progress =
                    new ProgressLines(terminal.err(), read.settings().money(), effort.time());
            DayPlanner.Checked checked =
                    new DayPlanner(strategy).checked(problem, effort.effort(problem, interrupt::isAsked, progress));
            CutPlan plan = checked.plan();
            replan.tellChanges(problem, plan, units.figures(read));
            ProofTold.tell(terminal, checked);
            return keep(read, problem, plan);
        }
    }

    private ExitCode keep(Shop read, PackingProblem problem, CutPlan plan) {
        PlanDocument made = new PlanDocument(
                0,
                plan,
                read.settings().money(),
                new PlanDocument.Made(
                        engine(), effort.seed(), effort.word(), effort.time(), read.digests(), read.leftOut()),
                new PlanFacts.Whole(shop.mark(), movements(), problem));
        PlanKeeping keeping = new PlanKeeping(terminal, shop, bench);
        PlanDocument kept = out.file().map(file -> keeping.beside(made, file)).orElseGet(() -> keeping.numbered(made));
        files.show(terminal, common.json, new Answer(() -> PlanJson.text(kept), () -> page(read, problem, kept)));
        if (keeping.tellFaults()) {
            return ExitCode.BAD_INPUT;
        }
        return plan.unplanned().isEmpty() && read.leftOut().isEmpty() ? ExitCode.DONE : ExitCode.NOT_ALL_PLANNED;
    }

    private Document page(Shop read, PackingProblem problem, PlanDocument kept) {
        Figures figures = units.figures(read);
        PlanView view =
                PlanViews.of(read, problem, kept.plan(), figures.units()).marked(PlanMark.of(kept.number()));
        return OrdersNow.top(shop, read, kept.plan().day(), figures)
                .then(new PlanPage(figures, terminal.tape()).of(view));
    }

    /** How many movements each reel has had, where the shop keeps a ledger. */
    private Map<String, Long> movements() {
        return shop.rack().map(RackToday::movements).orElse(Map.of());
    }

    private static String engine() {
        return "bitterend " + Version.number();
    }
}
