package bitterend.cli;

import bitterend.day.RackToday;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanJson;
import bitterend.exchange.QuoteJson;
import bitterend.exchange.Shop;
import bitterend.finding.Findings;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.FullStrategy;
import bitterend.quoting.PlanShares;
import bitterend.report.AnswerPage;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.report.PlanPage;
import bitterend.report.PlanView;
import bitterend.report.QuoteSharesPage;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
            "Prints the plan and writes it to plan.json in the shop folder. Writes nothing",
            "when the input has errors (exit code 3). Exit code 4 when some pieces could not",
            "be planned; the plan for the others is written all the same.",
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

    @Option(
            names = "--from",
            paramLabel = "PLAN",
            description =
                    "An earlier plan of the day: pieces stay on their reels where they may, and what changed is told.")
    private @Nullable Path from;

    @Option(
            names = "--keep",
            paramLabel = "PLAN",
            description = "An earlier plan whose pieces must stay on their reels, like pins.")
    private @Nullable Path keep;

    @Option(
            names = "--explain",
            paramLabel = "ID",
            description = "Print why this piece or reel is planned as it is, instead of the plan.")
    private @Nullable String explain;

    @Option(names = "--out", paramLabel = "FILE", description = "Write the plan here instead of SHOP/plan.json.")
    private @Nullable Path out;

    @Option(names = "--shares", description = "Say too what each order of the day caused, waste and reels included.")
    private boolean shares;

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    PlanCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<Shop> read = shop.readOrComplain(terminal);
        return (read.isEmpty() ? ExitCode.BAD_INPUT : plan(read.get())).number();
    }

    private ExitCode plan(Shop read) {
        Findings findings = new Findings();
        Optional<FullStrategy> strategy = effort.strategy(findings);
        Optional<PackingProblem> problem = new KeptDraws(findings).pinned(read.problem(day.of(read)), keep);
        terminal.err().print(new FindingsPage(terminal.ink()).text(findings.sorted()));
        if (strategy.isEmpty() || problem.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        if (explain != null && !Answers.knows(problem.get(), explain)) {
            terminal.err()
                    .println("error: --explain: found \"" + explain + "\", expected the id of a piece such as "
                            + Answers.anyPiece(problem.get()) + ", or of a reel");
            return ExitCode.BAD_COMMAND_LINE;
        }
        Noon noon = new Noon(terminal, problem.get(), shop.rack());
        Optional<PackingProblem> open = noon.open(from);
        return open.isEmpty() ? ExitCode.BAD_INPUT : plan(read, noon, open.get(), strategy.get());
    }

    private ExitCode plan(Shop read, Noon noon, PackingProblem problem, FullStrategy strategy) {
        try (KeepBest keepBest = KeepBest.listening()) {
            ProgressLines progress =
                    new ProgressLines(terminal.err(), read.settings().money(), effort.time());
            CutPlan plan = new DayPlanner(strategy).plan(problem, effort.effort(problem, keepBest::isAsked, progress));
            noon.tellChanges(problem, plan, units.figures(read));
            ProofTold.tell(terminal, problem, plan);
            return show(read, problem, plan);
        }
    }

    private ExitCode show(Shop read, PackingProblem problem, CutPlan plan) {
        PlanDocument document = new PlanDocument(
                plan,
                read.settings().money(),
                new PlanDocument.Made(
                        engine(), effort.seed(), effort.time(), read.digests(), movements(), near(problem, plan)));
        PlanJson.write(out == null ? shop.folder.resolve("plan.json") : out, document);
        terminal.out().print(answer(read, problem, document));
        return plan.unplanned().isEmpty() ? ExitCode.DONE : ExitCode.NOT_ALL_PLANNED;
    }

    private String answer(Shop read, PackingProblem problem, PlanDocument document) {
        if (common.json) {
            return shares ? shares(read, problem, document.plan()) : PlanJson.text(document);
        }
        if (explain != null) {
            return new Answers(problem, document.plan())
                    .to(explain, new AnswerPage(units.figures(read), terminal.ink()));
        }
        String page = OrdersNow.block(shop, read, document.plan().day(), units.figures(read), terminal.ink())
                + page(read, problem, document.plan());
        return shares ? page + "\n" + shares(read, problem, document.plan()) : page;
    }

    private String page(Shop read, PackingProblem problem, CutPlan plan) {
        Figures figures = units.figures(read);
        PlanView view = PlanViews.of(read, problem, plan, figures.units());
        return new PlanPage(figures, terminal.ink(), terminal.tape()).text(view);
    }

    private String shares(Shop read, PackingProblem problem, CutPlan plan) {
        List<PlanShares.OrderShare> caused = PlanShares.of(problem, plan);
        return common.json
                ? new QuoteJson(read.settings().money()).shares(caused)
                : new QuoteSharesPage(units.figures(read), terminal.ink())
                        .text(read.settings().name(), plan.day().toString(), caused);
    }

    /** How many movements each reel has had, where the shop keeps a ledger. */
    private Map<String, Long> movements() {
        return shop.rack().map(RackToday::movements).orElse(Map.of());
    }

    /** What of an earlier plan this one was held to: what moved all the same, and what --keep kept. */
    private PlanDocument.Near near(PackingProblem problem, CutPlan plan) {
        Map<String, String> moved = new HashMap<>();
        for (ReelDraw draw : plan.draws()) {
            for (Cut cut : draw.cuts()) {
                String before = problem.earlier().getOrDefault(cut.piece(), draw.reel());
                if (!before.equals(draw.reel())) {
                    moved.put(cut.piece(), before);
                }
            }
        }
        Map<String, String> kept = new HashMap<>();
        if (keep != null) {
            problem.pins().forEach(pin -> kept.put(pin.piece(), pin.reel()));
        }
        return new PlanDocument.Near(moved, kept);
    }

    private static String engine() {
        return "bitterend " + Version.number();
    }
}
