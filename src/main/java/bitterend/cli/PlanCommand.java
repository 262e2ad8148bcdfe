package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.LateRopeJson;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFolder.Kept;
import bitterend.exchange.PlanJson;
import bitterend.exchange.Shop;
import bitterend.finding.Findings;
import bitterend.front.ShownPlan;
import bitterend.packing.explain.LateRope;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.report.LateRopePage;
import bitterend.work.NamedPlan;
import bitterend.work.Plans;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import bitterend.work.Watcher;
import bitterend.work.plans.AskLate;
import bitterend.work.plans.DayQuestion;
import bitterend.work.plans.PlanDay;
import bitterend.work.plans.PlanSearch;
import bitterend.work.plans.PlannedDay;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code plan SHOP}: which piece off which reel, in which order, and what is left. */
@Command(
        name = "plan",
        header = "Plans the day: every piece on a reel, in cutting order.",
        description = {
            "",
            "Prints what a person needs first on one screen, gives the plan the next number",
            "and puts it in force; --html and --pdf have all of it, bitterend show each part.",
            "All plans are kept, in SHOP/plans. Writes nothing when the input has errors",
            "(exit code 3).",
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

    @Option(
            names = "--until",
            paramLabel = "DATE",
            converter = Typed.Day.class,
            description = "Plan what must be cut by this day; else as far ahead as horizon in shop.json says.")
    private @Nullable LocalDate until;

    @Mixin
    private EffortOption effort = new EffortOption();

    @Mixin
    private PlanFrom earlier = new PlanFrom();

    @Mixin
    private PlanQuestions questions = new PlanQuestions();

    @Mixin
    private PlanLate late = new PlanLate();

    @Mixin
    private PlanOut out = new PlanOut();

    @Option(
            names = "--withdraw",
            description = "Call issued sheets back: what is issued and not cut is planned anew, too.")
    private boolean withdraw;

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
        Optional<String> refusal = refusal();
        if (refusal.isPresent()) {
            terminal.err().println("error: " + refusal.get());
            return ExitCode.BAD_COMMAND_LINE.number();
        }
        try (Interrupt interrupt = Interrupt.listening(terminal, "there was a plan")) {
            return answer(interrupt).number();
        }
    }

    private ExitCode answer(Interrupt interrupt) {
        Optional<ShopNow> read = shop.readOrComplain(terminal);
        Optional<String> tooEarly = read.flatMap(now -> UntilDay.refusal(until, day.of(now.shop())));
        if (tooEarly.isPresent()) {
            terminal.err().println("error: " + tooEarly.get());
            return ExitCode.BAD_COMMAND_LINE;
        }
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        ShopNow now = read.get();
        return questions.isAsked()
                ? ask(now, interrupt)
                : late.isAsked() ? askLate(now, interrupt) : plan(now, interrupt);
    }

    private Optional<String> refusal() {
        if (questions.isAsked() && (earlier.isNamed() || out.file().isPresent())) {
            return Optional.of("--explain and --shares ask a plan that is there; --from, --keep and --out make one");
        }
        return common.json && questions.isTwo()
                ? Optional.of("--explain and --shares are two answers, and --json prints one: ask one after the other")
                : out.refusal(shop.folder);
    }

    private ExitCode ask(ShopNow now, Interrupt interrupt) {
        return new AskedPlan(terminal, now, units.figures(now.shop()))
                .then(questions.plan, passed -> answered(now, passed, interrupt));
    }

    private ExitCode answered(ShopNow now, Verdict.Passed passed, Interrupt interrupt) {
        Shop read = now.shop();
        PlanQuestions.Asked asked = questions.asked(now, passed);
        String refusal = questions.refusal(asked);
        if (!refusal.isEmpty()) {
            terminal.err().println("error: " + refusal);
            return ExitCode.BAD_COMMAND_LINE;
        }
        interrupt.begin("the answer is shown");
        files.show(
                terminal,
                common.json,
                new Answer(() -> questions.json(asked), () -> questions.page(asked, units.figures(read))));
        return ExitCode.DONE;
    }

    /** Plans with and without the delay; nothing is kept. */
    private ExitCode askLate(ShopNow now, Interrupt interrupt) {
        Findings findings = new Findings();
        Optional<PlanSearch> search = effort.search(findings);
        Plans plans = now.at().plans(findings);
        complain(findings);
        if (search.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        PlanDay.Request request = new PlanDay.Request(day.of(now.shop()), null, null, false, until);
        interrupt.begin("the two plans so far are compared");
        ProgressLines progress =
                new ProgressLines(terminal.err(), now.shop().settings().money(), effort.time());
        AskLate.Result result = new AskLate(now, plans)
                .ask(
                        new AskLate.Request(request, late.days()),
                        search.get(),
                        new Watcher(interrupt::isAsked, progress));
        interrupt.tell(
                "the two plans were not searched for equally long. What they differ in may come of that: ask again.");
        return told(now, result);
    }

    private ExitCode told(ShopNow now, AskLate.Result result) {
        if (result instanceof AskLate.Result.NotOnOrder not) {
            terminal.err().println("error: " + PlanLate.refusal(not));
            return ExitCode.BAD_COMMAND_LINE;
        }
        if (result instanceof AskLate.Result.NotAsked not) {
            not.refused().forEach(new GateTold(terminal, shop.folder)::tell);
            return ExitCode.BAD_INPUT;
        }
        LateRope answer = ((AskLate.Result.Answered) result).late();
        Shop read = now.shop();
        files.show(
                terminal,
                common.json,
                new Answer(() -> new LateRopeJson(read.settings().money()).text(answer), () -> new LateRopePage(
                                units.figures(read))
                        .of(read.settings().name(), answer)));
        return ExitCode.DONE;
    }

    private ExitCode plan(ShopNow now, Interrupt interrupt) {
        Findings findings = new Findings();
        Optional<PlanSearch> search = effort.search(findings);
        Plans plans = now.at().plans(findings);
        Kept from = named(earlier.from, plans, findings);
        Kept keep = named(earlier.keep, plans, findings);
        PlanDay verb = new PlanDay(now, plans);
        PlanDay.Asked asked = verb.ask(new PlanDay.Request(day.of(now.shop()), from, keep, withdraw, until));
        if (asked instanceof PlanDay.Asked.NotHeldTo not) {
            not.refused().forEach(new GateTold(terminal, shop.folder)::tell);
        }
        complain(findings);
        boolean missing = (earlier.from != null && from == null) || (earlier.keep != null && keep == null);
        return search.isPresent() && !missing && asked instanceof PlanDay.Asked.Ready ready
                ? plan(now, verb, ready.question(), search.get(), interrupt)
                : ExitCode.BAD_INPUT;
    }

    private static @Nullable Kept named(@Nullable String name, Plans plans, Findings findings) {
        return name == null ? null : new NamedPlan(plans).read(name, findings).orElse(null);
    }

    private ExitCode plan(ShopNow now, PlanDay verb, DayQuestion question, PlanSearch search, Interrupt interrupt) {
        PlanTold told = new PlanTold(terminal, units.figures(now.shop()));
        told.question(question);
        interrupt.begin("the best plan so far is checked and kept");
        ProgressLines progress =
                new ProgressLines(terminal.err(), now.shop().settings().money(), effort.time());
        PlannedDay planned = verb.plan(question, search, new Watcher(interrupt::isAsked, progress));
        told.planned(planned);
        ExitCode kept = keep(now, verb, planned);
        if (!interrupt.isAsked() || kept == ExitCode.BAD_INPUT) {
            return kept;
        }
        interrupt.tell("this is the best plan found so far, checked like every other. Plan again to search longer.");
        return ExitCode.STOPPED;
    }

    private ExitCode keep(ShopNow now, PlanDay verb, PlannedDay planned) {
        PlanKeeping keeping = new PlanKeeping(now.at());
        PlanDocument kept = out.file()
                .map(file -> keeping.beside(planned.plan(), file))
                .orElseGet(() -> keeping.numbered(verb, planned));
        Figures figures = units.figures(now.shop());
        ShownPlan shown = new ShownPlan(
                now, ShownPlan.Which.of(planned, kept), figures, terminal.tape(), ShownPlan.Asking.BY_COMMANDS);
        files.show(
                terminal,
                common.json,
                new Answer(() -> PlanJson.text(kept), shown::whole, Optional.of(() -> shown.screen())));
        if (keeping.tellFaults(terminal)) {
            return ExitCode.BAD_INPUT;
        }
        return planned.isWhole() ? ExitCode.DONE : ExitCode.NOT_ALL_PLANNED;
    }

    private void complain(Findings findings) {
        terminal.err().print(FindingsPage.text(findings.sorted(), terminal.ink()));
    }
}
