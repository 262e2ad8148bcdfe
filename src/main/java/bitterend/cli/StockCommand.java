package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.StockJson;
import bitterend.report.Figures;
import bitterend.report.PaidFacts;
import bitterend.report.RackTable;
import bitterend.stock.Holding;
import bitterend.stock.Movement;
import bitterend.stock.Paid;
import bitterend.work.rack.AskRack;
import bitterend.work.rack.AskRack.Found;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code stock ...}: the ledger of the rack. Each method is a command. */
@Command(
        name = "stock",
        header = "Keeps the ledger of the rack: what came, was cut, kept, counted.",
        synopsisSubcommandLabel = "COMMAND",
        description = {
            "",
            "The ledger is the file stock.db in the shop folder, or a loft on a server where",
            "shop.json names one. Once it is there, plan uses it instead of reels.csv. What a",
            "command books is an event; events are added and never changed, and what is",
            "wrong is taken back with undo.",
            ""
        },
        commandListHeading = "%nCommands:%n")
final class StockCommand extends StockReels implements Callable<Integer> {
    /** All commands as a day needs them: what comes, what is looked at, what is cut, what else befalls a reel, the ledger. */
    static final List<String> IN_THE_DAY = List.of(
            "open",
            "order",
            "receive",
            "list",
            "short",
            "claims",
            "idle",
            "history",
            "trace",
            "hold",
            "release",
            "reserve",
            "post",
            "cut",
            "spoil",
            "undo",
            "count",
            "gauge",
            "flaw",
            "correct",
            "move",
            "rewind",
            "split",
            "return",
            "sell",
            "condemn",
            "send",
            "arrive",
            "export",
            "verify",
            "backup",
            "restore",
            "move-ledger");

    private final Terminal terminal;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    boolean help;

    StockCommand(Terminal terminal) {
        super(terminal);
        this.terminal = terminal;
    }

    /** The command with all its commands. */
    static CommandLine command(Terminal terminal) {
        CommandLine all = new CommandLine(new StockCommand(terminal))
                .addSubcommand(new StockOrderCommand(terminal))
                .addSubcommand(new StockReceiveCommand(terminal))
                .addSubcommand(new StockPostCommand(terminal))
                .addSubcommand(new StockCutCommand(terminal))
                .addSubcommand(new StockReserveCommand(terminal))
                .addSubcommand(new StockShortCommand(terminal))
                .addSubcommand(new StockClaimsCommand(terminal))
                .addSubcommand(new StockIdleCommand(terminal))
                .addSubcommand(new StockCountCommand(terminal))
                .addSubcommand(new StockGaugeCommand(terminal))
                .addSubcommand(new StockFlawCommand(terminal))
                .addSubcommand(new StockCorrectCommand(terminal))
                .addSubcommand(new StockSpoilCommand(terminal))
                .addSubcommand(new StockArriveCommand(terminal))
                .addSubcommand(new StockUndoCommand(terminal))
                .addSubcommand(new StockTraceCommand(terminal));
        for (String name : IN_THE_DAY) {
            all.getCommandSpec().addSubcommand(name, all.getCommandSpec().removeSubcommand(name));
        }
        return all;
    }

    @Override
    public Integer call() {
        spec.commandLine().usage(terminal.err());
        return ExitCode.BAD_COMMAND_LINE.number();
    }

    @Command(name = "list", header = "Lists what is on the rack.")
    int list(
            @Mixin StockAccess at,
            @Mixin PageFiles files,
            @Mixin TableFiles tables,
            @Option(names = "--all", description = "Also reels of which nothing is left.") boolean all) {
        List<Holding> holdings = new AskRack(at.access()).holdings(all);
        int code = at.show(terminal, files, "On the rack", new Answer(() -> StockJson.rack(holdings), () -> at.page()
                .rack(holdings)));
        tables.write(terminal, () -> new RackTable(at.figures()).of(holdings));
        return code;
    }

    @Command(name = "history", header = "Lists every movement of a reel.")
    int history(
            @Mixin StockAccess at, @Mixin PageFiles files, @Parameters(index = "1", paramLabel = "REEL") String reel) {
        AskRack rack = new AskRack(at.access());
        Found found = StockTraceCommand.there(rack.history(reel));
        List<Movement> history = ((Found.History) found).movements();
        Optional<Paid.OfReel> paid = rack.paid(reel);
        List<Paid.Corrected> corrected = rack.corrected(reel);
        Figures figures = at.figures();
        return at.show(
                terminal,
                files,
                "Reel " + reel,
                new Answer(() -> StockJson.history(history, paid, corrected, figures.currency()), () -> at.page()
                        .movements(history)
                        .with(PaidFacts.below(paid, corrected, figures, ZoneId.systemDefault()))));
    }
}
