package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.ClaimsJson;
import bitterend.market.Claims;
import bitterend.report.ClaimsPage;
import bitterend.report.ClaimsTable;
import bitterend.report.Figures;
import bitterend.report.page.Wording;
import bitterend.work.ShopNow;
import bitterend.work.rack.AskClaims;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code stock claims SHOP}: what suppliers delivered short and late. */
@Command(
        name = "claims",
        header = "Lists what suppliers delivered short or late, for a claim.",
        description = {
            "",
            "By supplier: reels that came shorter than they were ordered, how much of that is",
            "more than the supplier may send short and what was paid for it, and what came",
            "after the day it was expected. It looks at reels that were received with the",
            "number of their order, and writes nothing.",
            ""
        },
        sortOptions = false)
final class StockClaimsCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Option(
            names = "--since",
            paramLabel = "DATE",
            converter = Typed.Day.class,
            description = "What came on this day or later.")
    private LocalDate since = LocalDate.MIN;

    @Option(
            names = "--until",
            paramLabel = "DATE",
            converter = Typed.Day.class,
            description = "What came on this day or before.")
    private LocalDate until = LocalDate.MAX;

    @Option(
            names = "--supplier",
            paramLabel = "NAME",
            defaultValue = "",
            converter = Typed.Words.class,
            description = "Of this supplier alone.")
    private String supplier = "";

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private TableFiles tables = new TableFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    StockClaimsCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<ShopNow> read = shop.readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        AskClaims verb = new AskClaims(read.get());
        if (!supplier.isEmpty() && !verb.suppliers().contains(supplier)) {
            terminal.err()
                    .println(Wording.sentence("error: --supplier: found \"" + supplier + "\", expected "
                            + (verb.suppliers().isEmpty()
                                    ? "nothing: no supplier is known"
                                    : "one of " + String.join(", ", verb.suppliers()))));
            return ExitCode.BAD_COMMAND_LINE.number();
        }
        Claims claims = verb.ask(since, until, supplier);
        Figures figures = units.figures(read.get().shop());
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> new ClaimsJson(read.get().shop().settings().money()).text(claims),
                        () -> new ClaimsPage(figures).of(claims, since, until)));
        tables.write(terminal, () -> new ClaimsTable(figures).of(claims));
        return ExitCode.DONE.number();
    }
}
