package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.Shop;
import bitterend.exchange.quotes.QuotesJson;
import bitterend.finding.Findings;
import bitterend.quoting.life.QuoteStanding;
import bitterend.report.FindingsPage;
import bitterend.report.QuoteListPage;
import bitterend.work.ShopNow;
import bitterend.work.quotes.QuoteBook;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code quote list SHOP}: the kept quotes and how far each has come. */
@Command(
        name = "list",
        header = "Lists the kept quotes, how far each has come, and the sums.",
        description = {
            "",
            "A quote is drawn up, sent, accepted or declined; it has lapsed once the last",
            "day it holds has passed without an answer.",
            ""
        },
        sortOptions = false)
final class QuoteListCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    QuoteListCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<ShopNow> read = shop.readOrComplain(terminal);
        return (read.isEmpty() ? ExitCode.BAD_INPUT : list(read.get())).number();
    }

    private ExitCode list(ShopNow now) {
        Shop read = now.shop();
        Findings findings = new Findings();
        LocalDate today = day.of(read);
        List<QuoteStanding> quotes = new QuoteBook(now.at(), read.settings().money(), findings).standing(today);
        terminal.err().print(FindingsPage.text(findings.sorted(), terminal.ink()));
        files.show(
                terminal,
                common.json,
                new Answer(() -> new QuotesJson(read.settings().money()).list(today, quotes), () -> new QuoteListPage(
                                units.figures(read))
                        .of(read.settings().name(), today, quotes)));
        return findings.hasErrors() ? ExitCode.BAD_INPUT : ExitCode.DONE;
    }
}
