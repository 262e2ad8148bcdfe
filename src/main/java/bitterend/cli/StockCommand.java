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
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import java.util.stream.Stream;
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
        addMethodSubcommands = false,
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

    /** The command with all its commands; those called for are whole. */
    static CommandLine command(Terminal terminal, Predicate<String> isCalled) {
        Stream<CommandEntry> classes = Stream.of(
                CommandEntry.of(StockOrderCommand.class, () -> new StockOrderCommand(terminal)),
                CommandEntry.of(StockReceiveCommand.class, () -> new StockReceiveCommand(terminal)),
                CommandEntry.of(StockPostCommand.class, () -> new StockPostCommand(terminal)),
                CommandEntry.of(StockCutCommand.class, () -> new StockCutCommand(terminal)),
                CommandEntry.of(StockReserveCommand.class, () -> new StockReserveCommand(terminal)),
                CommandEntry.of(StockShortCommand.class, () -> new StockShortCommand(terminal)),
                CommandEntry.of(StockClaimsCommand.class, () -> new StockClaimsCommand(terminal)),
                CommandEntry.of(StockIdleCommand.class, () -> new StockIdleCommand(terminal)),
                CommandEntry.of(StockCountCommand.class, () -> new StockCountCommand(terminal)),
                CommandEntry.of(StockGaugeCommand.class, () -> new StockGaugeCommand(terminal)),
                CommandEntry.of(StockFlawCommand.class, () -> new StockFlawCommand(terminal)),
                CommandEntry.of(StockCorrectCommand.class, () -> new StockCorrectCommand(terminal)),
                CommandEntry.of(StockSpoilCommand.class, () -> new StockSpoilCommand(terminal)),
                CommandEntry.of(StockArriveCommand.class, () -> new StockArriveCommand(terminal)),
                CommandEntry.of(StockUndoCommand.class, () -> new StockUndoCommand(terminal)),
                CommandEntry.of(StockTraceCommand.class, () -> new StockTraceCommand(terminal)));
        List<CommandEntry> inTheDay = Stream.concat(CommandEntry.methods(StockCommand.class), classes)
                .sorted(Comparator.comparing(entry -> IN_THE_DAY.indexOf(entry.name())))
                .toList();
        return CommandEntry.below(new CommandLine(new StockCommand(terminal)), isCalled, inTheDay);
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
