package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.QuoteJson;
import bitterend.exchange.QuoteReader;
import bitterend.exchange.Shop;
import bitterend.quoting.QuoteComparison.Compared;
import bitterend.quoting.QuotedWork;
import bitterend.report.FindingsPage;
import bitterend.report.QuoteComparePage;
import bitterend.work.ShopNow;
import bitterend.work.trade.CompareQuote;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code quote compare SHOP QUOTE}: what was quoted against what the ledger says was cut. */
@Command(
        name = "compare",
        header = "Holds a filed quote against what was posted for its order.",
        description = {
            "",
            "QUOTE is a file written with quote --out. The order is looked up in the ledger",
            "stock.db by the number of the request, unless --order names another.",
            ""
        },
        sortOptions = false)
final class QuoteCompareCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Parameters(index = "1", paramLabel = "QUOTE", description = "The filed quote, a JSON file.")
    private Path file = Path.of("");

    @Option(
            names = "--order",
            paramLabel = "ORDER",
            description = "The order that came of it, if its number is another.")
    private @Nullable String order;

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    QuoteCompareCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<ShopNow> read = shop.readFiles(terminal);
        return (read.isEmpty() ? ExitCode.BAD_INPUT : compare(read.get())).number();
    }

    private ExitCode compare(ShopNow now) {
        Shop read = now.shop();
        QuoteReader reader = new QuoteReader(read.settings().money());
        Optional<QuotedWork> work = reader.read(file);
        if (work.isEmpty()) {
            terminal.err().print(FindingsPage.text(reader.findings(), terminal.ink()));
            return ExitCode.BAD_INPUT;
        }
        String number = order == null ? work.get().request() : order;
        Compared compared = new CompareQuote(now).compared(work.get(), number);
        String request = work.get().request();
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> new QuoteJson(read.settings().money()).comparison(request, number, compared),
                        () -> new QuoteComparePage(units.figures(read)).of(request, number, compared)));
        return ExitCode.DONE;
    }
}
