package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.front.ShownPlan;
import bitterend.report.Figures;
import bitterend.report.page.Document;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code show SHOP [PART]}: the plan in force again, on one screen or a part of it. */
@Command(
        name = "show",
        header = "Shows the plan in force again: on one screen, or a part of it.",
        description = {"", "Plans nothing and writes nothing.", ""},
        sortOptions = false)
final class ShowCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "PART",
            description =
                    "tables (every cut of every reel), week (what is cut on which day), changes (against the plan before it), reasons (what is not planned and why, what to know before"
                            + " the cut), money (where the rope goes, what it costs, what is proven), or the number of a reel.")
    private @Nullable String part;

    @Option(
            names = "--plan",
            paramLabel = "PLAN",
            description = "Show this plan, by its number, instead of the one in force.")
    private @Nullable String plan;

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private TableFiles tables = new TableFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    ShowCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<ShopNow> read = shop.readOrComplain(terminal);
        return (read.isEmpty() ? ExitCode.BAD_INPUT : show(read.get())).number();
    }

    private ExitCode show(ShopNow now) {
        Figures figures = units.figures(now.shop());
        return new AskedPlan(terminal, now, figures).then(plan, passed -> show(now, passed, figures));
    }

    /** A page of HTML leads to the sheets that were written. */
    private ShownPlan.Asking asking(ShopNow now, Verdict.Passed passed) {
        WrittenSheets sheets = new WrittenSheets(
                now.at().folder(), passed.number(), passed.plan().day());
        return files.html()
                .map(page -> new ShownPlan.Asking(true, day -> sheets.from(page, day)))
                .orElse(ShownPlan.Asking.BY_COMMANDS);
    }

    private ExitCode show(ShopNow now, Verdict.Passed passed, Figures figures) {
        ShownPlan shown = new ShownPlan(now, ShownPlan.Which.of(passed), figures, terminal.tape(), asking(now, passed));
        Optional<Document> page = part == null ? Optional.of(shown.screen()) : shown.part(part);
        if (page.isEmpty()) {
            terminal.err()
                    .println("error: found \"" + part
                            + "\", expected tables, week, changes, reasons, money, or the number of a reel that plan "
                            + passed.number()
                            + " cuts");
            return ExitCode.BAD_COMMAND_LINE;
        }
        files.show(terminal, common.json, new Answer(() -> shown.json(part), page::get));
        tables.write(terminal, () -> shown.tables(true));
        return ExitCode.DONE;
    }
}
