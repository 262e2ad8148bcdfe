package bitterend.cli;

import bitterend.demand.SpliceCard.How;
import bitterend.exchange.AnswerJson;
import bitterend.exchange.Shop;
import bitterend.measure.Length;
import bitterend.report.FindingsPage;
import bitterend.report.MeasuredPage;
import bitterend.stock.Ledger;
import bitterend.store.SqliteLedger;
import bitterend.work.FinishedLog;
import bitterend.work.MeasureFinished;
import bitterend.work.MeasureFinished.Boxes;
import bitterend.work.MeasureFinished.Result;
import bitterend.work.MeasureFinished.Said;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code measure SHOP PIECE}: the boxes of a splice card. */
@Command(
        name = "measure",
        header = "Books what a finished piece measures: the boxes of its splice card.",
        description = {
            "",
            "Adds a row to measured.csv, from which calibrate learns, and where the shop",
            "keeps a ledger books the piece as spliced, and as passed when it passes. A piece",
            "outside of what passes is booked only with --accepted, --respliced or --spoiled.",
            "Its tag says so, printed again.",
            ""
        },
        sortOptions = false)
final class MeasureCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Parameters(index = "1", paramLabel = "PIECE", description = "Such as 1041/3.2.")
    private String piece = "";

    @Option(
            names = "--cut",
            paramLabel = "LENGTH",
            required = true,
            converter = LengthOption.class,
            description = "What it was cut to.")
    private Length cut = Length.ZERO;

    @Option(
            names = "--came-out",
            paramLabel = "LENGTH",
            required = true,
            converter = LengthOption.class,
            description = "What it measures when it is made.")
    private Length cameOut = Length.ZERO;

    @Option(
            names = "--how",
            paramLabel = "HOW",
            defaultValue = "slack",
            description = "slack on the floor, on its pins, or under the tension of the order. Default: slack.")
    private How how = How.SLACK;

    @Option(names = "--splicer", paramLabel = "NAME", defaultValue = "", description = "Who made it.")
    private String splicer = "";

    @Mixin
    private DayOption day = new DayOption();

    @ArgGroup
    private Outside outside = new Outside();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    /** What becomes of a piece that does not pass; one of these. */
    static final class Outside {
        @Option(names = "--accepted", paramLabel = "NAME", description = "It does not pass; who accepts it.")
        private @Nullable String accepted;

        @Option(names = "--respliced", description = "It does not pass; it is to be spliced again.")
        private boolean respliced;

        @Option(names = "--spoiled", description = "It does not pass; it is to be made again.")
        private boolean spoiled;

        Said said() {
            if (accepted != null) {
                return Said.accepted(accepted.strip());
            }
            return respliced ? Said.RESPLICED : spoiled ? Said.SPOILED : Said.NOTHING;
        }
    }

    MeasureCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<Shop> read = shop.readOrComplain(terminal);
        return (read.isEmpty() ? ExitCode.BAD_INPUT : tell(book(read.get()), read.get())).number();
    }

    private Result book(Shop read) {
        Boxes boxes = new Boxes(piece, cut, cameOut, how, splicer.strip(), day.of(read), outside.said());
        if (!SqliteLedger.isKeptIn(shop.folder)) {
            return new MeasureFinished(shop.folder, read, FinishedLog.NONE).book(boxes);
        }
        try (Ledger ledger = SqliteLedger.open(shop.folder, Clock.systemUTC())) {
            String who = splicer.isBlank() ? System.getProperty("user.name", "unknown") : splicer.strip();
            return new MeasureFinished(shop.folder, read, new FinishedLog.OfLedger(ledger, act -> act.by(who)))
                    .book(boxes);
        }
    }

    private ExitCode tell(Result result, Shop read) {
        MeasuredPage page = new MeasuredPage(units.figures(read));
        if (result instanceof Result.Booked booked) {
            terminal.out()
                    .print(
                            common.json
                                    ? AnswerJson.measured(booked.boxes().piece(), booked.verdict(), booked.wanted())
                                    : page.booked(
                                            booked.boxes().piece(),
                                            booked.boxes().cameOut(),
                                            booked.verdict(),
                                            booked.wanted()));
            return ExitCode.DONE;
        }
        if (result instanceof Result.Outside found) {
            terminal.err()
                    .print(page.outside(found.boxes().piece(), found.boxes().cameOut(), found.wanted()));
            return ExitCode.BAD_COMMAND_LINE;
        }
        if (result instanceof Result.NotWritten faults) {
            terminal.err().print(new FindingsPage(terminal.ink()).text(faults.findings()));
            return ExitCode.BAD_INPUT;
        }
        terminal.err().println("error: " + ((Result.Refused) result).why() + "; nothing was booked");
        return ExitCode.BAD_INPUT;
    }
}
