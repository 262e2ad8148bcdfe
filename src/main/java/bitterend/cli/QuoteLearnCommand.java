package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.AfterJson;
import bitterend.exchange.Shop;
import bitterend.quoting.after.Learned;
import bitterend.report.QuoteLearnPage;
import bitterend.work.ShopNow;
import bitterend.work.quotes.SettleQuote;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code quote learn SHOP}: where quotes were off over all jobs, and what to count on instead. */
@Command(
        name = "learn",
        header = "Says where the quotes of all jobs were off: rope, waste, minutes by end.",
        description = {
            "",
            "Jobs are accepted quotes of which a line is cut whole. Three jobs or more",
            "propose minutes of an end and the waste of a rope. Nothing is written: take a",
            "proposal over by hand.",
            ""
        },
        sortOptions = false)
final class QuoteLearnCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private TableFiles tables = new TableFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    QuoteLearnCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<ShopNow> read = shop.readOrComplain(terminal);
        return (read.isEmpty() ? ExitCode.BAD_INPUT : learn(read.get())).number();
    }

    private ExitCode learn(ShopNow now) {
        Shop read = now.shop();
        Learned learned = new SettleQuote(now, day.of(read)).learned();
        QuoteLearnPage page = new QuoteLearnPage(units.figures(read));
        tables.write(terminal, () -> page.tables(learned));
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> new AfterJson(read.settings().money()).learned(learned),
                        () -> page.of(read.settings().name(), learned)));
        return learned.jobs() == 0 ? ExitCode.NOT_ALL_PLANNED : ExitCode.DONE;
    }
}
