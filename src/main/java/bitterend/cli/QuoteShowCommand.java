package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.quotes.KeptQuote;
import bitterend.finding.Findings;
import bitterend.report.page.Wording;
import bitterend.work.ShopNow;
import bitterend.work.quotes.QuoteBook;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code quote show SHOP QUOTE}: a kept quote again, as it was filed. */
@Command(
        name = "show",
        header = "Prints a kept quote again, as it was filed and at its prices.",
        description = {
            "",
            "The page is that of the day it was filed, word for word and in its units,",
            "whatever became of ropes and prices since.",
            ""
        },
        sortOptions = false)
final class QuoteShowCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Parameters(index = "1", paramLabel = "QUOTE", description = "Number of the quote, such as Q-2601.")
    private String number = "";

    @Option(
            names = "--rev",
            paramLabel = "NUMBER",
            converter = Typed.Revision.class,
            description = "This revision. Default: the last one.")
    private int revision;

    @Option(names = "--customer", description = "Print the customer's page: no cost, waste or margin.")
    private boolean customer;

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    QuoteShowCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<ShopNow> read = shop.readFiles(terminal);
        return (read.isEmpty() ? ExitCode.BAD_INPUT : show(read.get())).number();
    }

    private ExitCode show(ShopNow now) {
        Optional<KeptQuote> kept = QuoteKeeping.read(terminal, now, number, revision);
        if (kept.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        Optional<String> bar = customer && common.json ? kept.get().barOfCustomer() : Optional.empty();
        if (bar.isPresent()) {
            terminal.err().println(Wording.sentence("error: " + bar.get() + "."));
            return ExitCode.BAD_INPUT;
        }
        if (units.isAsked()) {
            terminal.err().println("A kept page is in the units in which it was filed.");
        }
        KeptQuote.Pages pages = kept.get().pages();
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> new QuoteBook(now.at(), now.shop().settings().money(), new Findings())
                                .json(kept.get().head().name(), customer),
                        () -> customer ? pages.forCustomer() : pages.forFile()));
        return ExitCode.DONE;
    }
}
