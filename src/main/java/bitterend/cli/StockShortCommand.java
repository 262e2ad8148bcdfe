package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.Shop;
import bitterend.exchange.ShortageJson;
import bitterend.packing.strategy.EffortLevel;
import bitterend.report.ShortagePage;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import bitterend.work.plans.ForecastShortage;
import bitterend.work.plans.ForecastShortage.Forecast;
import bitterend.work.plans.PlanSearch;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code stock short SHOP}: on which of the days ahead rope is short. */
@Command(
        name = "short",
        header = "Tells on which of the days ahead rope is short, and for whom.",
        description = {
            "",
            "By rope and day: what must be cut, what is there, held and on order, and what",
            "of the work a plan of these days leaves undone, the urgent work done first,",
            "with the orders that wait and the reels on hold, out of date or kept for others",
            "that would help. It plans for a moment and writes nothing.",
            ""
        },
        sortOptions = false)
final class StockShortCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Mixin
    private DayOption day = new DayOption();

    @Option(
            names = "--until",
            paramLabel = "DATE",
            converter = Typed.Day.class,
            description = "Look at what must be cut by this day; else as far as plan looks.")
    private @Nullable LocalDate until;

    @Option(
            names = "--time",
            paramLabel = "TIME",
            converter = DurationText.class,
            defaultValue = "5s",
            description = "Plan no longer than this. Default: ${DEFAULT-VALUE}.")
    private Duration time = Duration.ZERO;

    @Mixin
    private SeedOption seed = new SeedOption();

    @Mixin
    private ThreadsOption threads = new ThreadsOption();

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    StockShortCommand(Terminal terminal) {
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
        Shop now = read.get().shop();
        Optional<String> tooEarly = UntilDay.refusal(until, day.of(now));
        if (tooEarly.isPresent()) {
            terminal.err().println("error: " + tooEarly.get());
            return ExitCode.BAD_COMMAND_LINE;
        }
        interrupt.begin("the answer so far is shown");
        Forecast forecast = new ForecastShortage(read.get())
                .forecast(
                        new ForecastShortage.Request(day.of(now), until),
                        PlanSearch.of(EffortLevel.QUICK, time, seed.seed).on(threads.count()),
                        Watcher.who(interrupt::isAsked));
        interrupt.tell("what is below was not searched to its end; a longer search may want less.");
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> ShortageJson.text(
                                forecast.day(), forecast.horizon().until(), forecast.ropes()),
                        () -> new ShortagePage(units.figures(now))
                                .of(now.settings().name(), forecast.horizon().until(), forecast.ropes())));
        return forecast.isEnough() ? ExitCode.DONE : ExitCode.NOT_ALL_PLANNED;
    }
}
