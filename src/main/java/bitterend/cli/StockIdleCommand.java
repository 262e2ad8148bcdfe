package bitterend.cli;

import bitterend.buying.IdleReel;
import bitterend.buying.IdleRope;
import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.IdleJson;
import bitterend.exchange.Shop;
import bitterend.report.Figures;
import bitterend.report.IdlePage;
import bitterend.report.IdleTable;
import bitterend.work.ShopNow;
import bitterend.work.rack.AskIdle;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code stock idle SHOP}: rope that nobody is likely to want. */
@Command(
        name = "idle",
        header = "Lists rope that nobody is likely to want, and what keeping it costs.",
        description = {
            "",
            "Reels and coils on which no piece of the past and none that is ordered fits,",
            "that last longer than the weeks of use given, or whose last day is past or near.",
            "What is kept for an order and a customer's own rope are wanted. It writes",
            "nothing to the shop.",
            ""
        },
        sortOptions = false)
final class StockIdleCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Mixin
    private DayOption day = new DayOption();

    @Option(
            names = "--weeks",
            paramLabel = "NUMBER",
            converter = Typed.Weeks.class,
            defaultValue = "52",
            description = "Idle is what lasts longer than this. Default: ${DEFAULT-VALUE}.")
    private int weeks;

    @Option(
            names = "--near",
            paramLabel = "NUMBER",
            converter = Typed.Weeks.class,
            defaultValue = "13",
            description = "A last day within so many weeks is near. Default: ${DEFAULT-VALUE}.")
    private int near;

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private TableFiles tables = new TableFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    StockIdleCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<ShopNow> read = shop.readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Shop now = read.get().shop();
        IdleRope.Limits limits = new IdleRope.Limits(weeks, near);
        List<IdleReel> idle = new AskIdle(read.get()).ask(day.of(now), limits);
        Figures figures = units.figures(now);
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> new IdleJson(now.settings().money()).text(day.of(now), limits, idle),
                        () -> new IdlePage(figures).of(day.of(now), limits, idle)));
        tables.write(terminal, () -> new IdleTable(figures).of(idle));
        return ExitCode.DONE.number();
    }
}
