package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.AfterJson;
import bitterend.exchange.QuoteReader;
import bitterend.quoting.QuotedWork;
import bitterend.quoting.after.AfterCalculation;
import bitterend.report.FindingsPage;
import bitterend.report.QuoteComparePage;
import bitterend.report.page.Wording;
import bitterend.work.ShopNow;
import bitterend.work.quotes.SettleQuote;
import bitterend.work.quotes.SettleQuote.Result;
import java.nio.file.Files;
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
        header = "Holds a quote against what was posted for its order, item by item.",
        description = {
            "",
            "QUOTE is the number of a kept quote that was accepted, or a file written with",
            "quote --out: then the order has the number of the request, unless --order names",
            "another. Lines are compared once all their pieces are cut; where none is yet the",
            "exit code is 4.",
            ""
        },
        sortOptions = false)
final class QuoteCompareCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Parameters(index = "1", paramLabel = "QUOTE", description = "Number of a kept quote, or a JSON file.")
    private String quote = "";

    @Option(
            names = "--order",
            paramLabel = "ORDER",
            description = "The order that came of it, if its number is another.")
    private @Nullable String order;

    @Mixin
    private DayOption day = new DayOption();

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
        Optional<ShopNow> read = shop.readOrComplain(terminal);
        return (read.isEmpty() ? ExitCode.BAD_INPUT : compare(read.get())).number();
    }

    private ExitCode compare(ShopNow now) {
        SettleQuote verb = new SettleQuote(now, day.of(now.shop()));
        Path file = Path.of(quote);
        if (!Files.isRegularFile(file)) {
            return told(now, order == null ? verb.ofQuote(quote) : verb.ofQuote(quote, order));
        }
        QuoteReader reader = new QuoteReader(now.shop().settings().money());
        Optional<QuotedWork> work = reader.read(file);
        if (work.isEmpty()) {
            terminal.err().print(FindingsPage.text(reader.findings(), terminal.ink()));
            return ExitCode.BAD_INPUT;
        }
        String request = work.get().request();
        return told(now, verb.ofOrder(request, work.get(), order == null ? request : order));
    }

    private ExitCode told(ShopNow now, Result result) {
        if (result instanceof Result.Refused refused) {
            terminal.err().println(Wording.sentence("error: " + refused.why() + "."));
            return ExitCode.BAD_INPUT;
        }
        if (result instanceof Result.NothingCut nothing) {
            files.show(
                    terminal,
                    common.json,
                    new Answer(
                            () -> new AfterJson(now.shop().settings().money()).nothing(nothing.why()),
                            () -> QuoteComparePage.nothing(quote, nothing.why())));
            return ExitCode.NOT_ALL_PLANNED;
        }
        AfterCalculation after = ((Result.Settled) result).after();
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> new AfterJson(now.shop().settings().money()).comparison(after),
                        () -> new QuoteComparePage(units.figures(now.shop())).of(after)));
        return ExitCode.DONE;
    }
}
