package bitterend.cli;

import bitterend.buying.Share;
import bitterend.buying.Spending;
import bitterend.buying.Study;
import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.Settings;
import bitterend.exchange.Shop;
import bitterend.front.TradePages;
import bitterend.measure.Money;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.report.BuyTables;
import bitterend.report.page.Wording;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import bitterend.work.trade.AdviseReels;
import bitterend.work.trade.AdviseReels.Result;
import bitterend.work.trade.StudyReels;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code buy SHOP}: which reels to order. */
@Command(
        name = "buy",
        header = "Tells which reels to order, for the orders in hand or for work like the past.",
        description = {
            "",
            "Without --from-history: ways to buy for the orders in hand, the least paid, the",
            "least cost (price paid less the value of what is left) and one between, each",
            "with what is proven of it, what is left of it and how long that lasts; and",
            "where rope is short in the days ahead, as stock short tells it. Reads",
            "offers.csv and, where there is one, on-order.csv.",
            "",
            "With --from-history: which reels to keep on the rack, when to order them and how",
            "many, so that pieces are in time. Years of work are drawn from history.csv, by",
            "season and trend, and every size on offer is tried on the same years.",
            "--html, --pdf and --pictures write such a study into files.",
            "A study can be shared out: run --share 1/4 to 4/4, then --merge the four files.",
            ""
        },
        sortOptions = false)
final class BuyCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Option(names = "--from-history", description = "Study work like that of history.csv.")
    private boolean fromHistory;

    @Option(
            names = "--from-rack",
            description =
                    "For a study: start from the rack of the day, what is on order and what is booked; else from a rack"
                            + " that has warmed up.")
    private boolean fromRack;

    @Mixin
    private DayOption day = new DayOption();

    @Option(
            names = "--time",
            paramLabel = "TIME",
            converter = DurationText.class,
            defaultValue = "20s",
            description = "For the orders in hand: search no longer than this. Default: ${DEFAULT-VALUE}.")
    private Duration time = Duration.ofSeconds(20);

    @Option(
            names = "--budget",
            paramLabel = "MONEY",
            converter = Typed.Words.class,
            description = "For the orders in hand: pay no more, such as \"5000 EUR\". Default: budget of shop.json.")
    private @Nullable String budget;

    @Option(
            names = "--most-weeks",
            paramLabel = "NUMBER",
            converter = Typed.Weeks.class,
            description = "For the orders in hand: buy no rope for longer. Default: mostWeeks of shop.json.")
    private @Nullable Integer mostWeeks;

    @Mixin
    private StudyOptions options = new StudyOptions(200, 52);

    @Option(
            names = "--service",
            paramLabel = "SHARE",
            converter = ServiceText.class,
            description =
                    "For a study: share of the pieces for which there must be rope in the week of their order. Default:"
                            + " service of shop.json, else 97 %%.")
    private @Nullable Ratio service;

    @Mixin
    private ThreadsOption threads = new ThreadsOption();

    @Option(
            names = "--share",
            paramLabel = "I/N",
            converter = ShareText.class,
            description = "Work out one share of the study, and print it for --merge.")
    private @Nullable Share share;

    @Option(
            names = "--merge",
            paramLabel = "FILE",
            arity = "1..*",
            description = "Put shares together instead of working anything out.")
    private List<Path> merge = List.of();

    @Mixin
    private BuyPapers papers = new BuyPapers();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    BuyCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        try (Interrupt interrupt = Interrupt.listening(terminal, "there was an answer")) {
            return answer(interrupt).number();
        }
    }

    private ExitCode answer(Interrupt interrupt) {
        boolean study = fromHistory || share != null || !merge.isEmpty();
        Optional<ShopNow> read = shop.readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        if (!AdviseReels.isOffered(read.get().shop())) {
            terminal.err().println("error: " + TradePages.NO_OFFER);
            return ExitCode.BAD_INPUT;
        }
        if (study) {
            return study(read.get(), interrupt);
        }
        Parsed<Spending> spending = spending(read.get().shop().settings());
        if (spending.value().isEmpty()) {
            terminal.err()
                    .println("error: --budget: found \"" + budget + "\", expected "
                            + spending.refusal().orElseThrow());
            return ExitCode.BAD_COMMAND_LINE;
        }
        return advise(read.get(), spending.value().get(), interrupt);
    }

    private Parsed<Spending> spending(Settings settings) {
        Spending usual = settings.spending();
        int weeks = mostWeeks == null ? usual.mostWeeks() : mostWeeks;
        Parsed<Money> most = budget == null ? Parsed.of(usual.budget()) : settings.budget(budget);
        return most.map(amount -> new Spending(amount, weeks));
    }

    private ExitCode study(ShopNow now, Interrupt interrupt) {
        Optional<Study.Size> size = options.size(terminal);
        if (size.isEmpty()) {
            return ExitCode.BAD_COMMAND_LINE;
        }
        Shop read = now.shop();
        StudyReels verb = new StudyReels(
                now, new StudyReels.Request(size.get(), options.ropes(), day.of(read), service, fromRack));
        List<String> unstudied = TradePages.unstudied(verb);
        unstudied.forEach(each -> terminal.err().println(Wording.sentence("error: --rope: " + each)));
        if (!unstudied.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        if (verb.isEmpty()) {
            terminal.err().println("error: " + TradePages.NOTHING_TO_STUDY);
            return ExitCode.BAD_INPUT;
        }
        BuyStudy study = new BuyStudy(terminal, verb, threads.count(), interrupt);
        return share != null ? study.share(share) : study.report(merge, read, units.figures(read), common.json, papers);
    }

    private ExitCode advise(ShopNow now, Spending spending, Interrupt interrupt) {
        Shop read = now.shop();
        interrupt.begin("the best advice so far is shown");
        Result.Advised advised = (Result.Advised) new AdviseReels(now)
                .advise(
                        new AdviseReels.Request(day.of(read), time, options.seed(), threads.count(), spending),
                        Watcher.who(interrupt::isAsked));
        interrupt.tell("the advice below was not searched to its end; a longer search may buy less.");
        papers.files.show(
                terminal,
                common.json,
                new Answer(
                        () -> TradePages.json(read, advised), () -> TradePages.of(read, advised, units.figures(read))));
        papers.tables.write(terminal, () -> new BuyTables(units.figures(read)).of(advised.advice()));
        return advised.isWhole() ? ExitCode.DONE : ExitCode.NOT_ALL_PLANNED;
    }
}
