package bitterend.cli;

import bitterend.buying.Study;
import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.CoilValuesJson;
import bitterend.exchange.Shop;
import bitterend.exchange.ShopValues;
import bitterend.exchange.ValuesJson;
import bitterend.finding.Findings;
import bitterend.finding.NaturalOrder;
import bitterend.front.TradePages;
import bitterend.report.CoilValuePage;
import bitterend.report.FindingsPage;
import bitterend.report.page.Document;
import bitterend.report.page.Wording;
import bitterend.stock.worth.CoilValue;
import bitterend.work.ShopNow;
import bitterend.work.trade.ValueCoils;
import bitterend.work.trade.ValueCoils.Coils;
import bitterend.work.trade.ValueCoils.Own;
import bitterend.work.trade.ValueCoils.Trial;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code value SHOP}: what coils are worth today, and what a curve of the shop's own costs. */
@Command(
        name = "value",
        header = "Shows what a coil on the rack is worth today, and why.",
        description = {
            "",
            "A coil is worth what it saves later, less interest and room until then; how",
            "long that is depends on the coils that are on the rack this morning. Prints",
            "and draws the curve of each rope. --from-history tries a curve that the shop",
            "has of its own in values.json against it, on weeks picked from the past.",
            "--write takes curves that were learned from the past out of values.json; the",
            "file as it was stays in values.old.json.",
            ""
        },
        sortOptions = false)
final class ValueCommand implements Callable<Integer> {
    private static final int SCENARIOS = 16;
    private static final int WEEKS = 10;

    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private ThreadsOption threads = new ThreadsOption();

    @Option(names = "--from-history", description = "Try the shop's own curves on weeks picked from history.csv.")
    boolean fromHistory;

    @Option(names = "--write", description = "Take stale curves, learned from the past once, out of values.json.")
    private boolean write;

    @Mixin
    private StudyOptions options = new StudyOptions(SCENARIOS, WEEKS);

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    ValueCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        try (Interrupt interrupt = Interrupt.listening(terminal, "there was an answer")) {
            return answer(interrupt).number();
        }
    }

    private ExitCode answer(Interrupt interrupt) {
        Optional<ShopNow> read = shop.readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        Optional<String> unknown = options.unknown(read.get().shop());
        if (unknown.isPresent()) {
            terminal.err().println(Wording.sentence("error: " + unknown.get()));
            return ExitCode.BAD_INPUT;
        }
        Optional<Study.Size> size = options.size(terminal);
        if (size.isEmpty()) {
            return ExitCode.BAD_COMMAND_LINE;
        }
        ValueCoils verb = new ValueCoils(read.get(), day.of(read.get().shop()));
        return show(read.get().shop(), verb, size.get(), interrupt);
    }

    private ExitCode show(Shop read, ValueCoils verb, Study.Size size, Interrupt interrupt) {
        Findings findings = new Findings();
        List<Coils> coils = verb.coils(options.ropes(), findings);
        terminal.err().print(FindingsPage.text(findings.sorted(), terminal.ink()));
        interrupt.begin("what is worked out so far is shown");
        CoilValuePage page = new CoilValuePage(units.figures(read));
        Document pages = Document.EMPTY;
        for (Coils each : coils) {
            pages = pages.with(page.of(shown(each))).with(trial(page, verb, each, size, interrupt));
        }
        if (fromHistory) {
            interrupt.tell("the shop's own curves were not tried to the end. Ask again for the rest.");
        }
        Document whole =
                pages.titled("", "What coils are worth", read.settings().name());
        Map<String, CoilValue> values = new TreeMap<>(NaturalOrder.IDS);
        coils.forEach(each -> values.put(each.rope().id(), each.today()));
        ShopValues own = read.supplies().values();
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> CoilValuesJson.text(values, own, read.settings().money()), () -> whole));
        if (write) {
            takeOut(verb, own);
        }
        boolean all =
                read.leftOut().stream().noneMatch(finding -> finding.file().startsWith("ropes."));
        return all ? ExitCode.DONE : ExitCode.NOT_ALL_PLANNED;
    }

    private static CoilValuePage.Coils shown(Coils coils) {
        return new CoilValuePage.Coils(
                coils.rope(), coils.today(), coils.rackNow(), coils.findOwn().map(ValueCommand::shown));
    }

    private static CoilValuePage.Own shown(Own own) {
        return new CoilValuePage.Own(own.curve(), own.typed());
    }

    private Document trial(CoilValuePage page, ValueCoils verb, Coils coils, Study.Size size, Interrupt interrupt) {
        return coils.findOwn()
                .filter(own -> fromHistory)
                .map(own -> tried(
                        page,
                        own,
                        size,
                        verb.trial(coils.rope(), own, size, threads.count(), interrupt::isAsked),
                        coils))
                .orElse(Document.EMPTY);
    }

    private Document tried(CoilValuePage page, Own own, Study.Size size, Trial trial, Coils coils) {
        if (trial instanceof Trial.NothingToTry) {
            terminal.err().println(coils.rope().id() + ": " + TradePages.NOTHING_TO_STUDY);
        }
        return trial instanceof Trial.Tried tried
                ? page.trial(tried.found(), shown(own), size.weeks())
                : Document.EMPTY;
    }

    /** The coil curve is made anew each morning: there is nothing of it to keep. */
    private void takeOut(ValueCoils verb, ShopValues own) {
        String told = verb.takeOutStale()
                .map(old -> "written: " + shop.folder.resolve(ValuesJson.NAME) + ", without the stale "
                        + (own.learned().size() == 1 ? "curve of " : "curves of ")
                        + String.join(", ", own.learned().keySet()) + "; as it was: " + old)
                .orElse("nothing to write: the coil curve is made anew every morning, and no stale curve is kept.");
        terminal.err().println(told);
    }
}
