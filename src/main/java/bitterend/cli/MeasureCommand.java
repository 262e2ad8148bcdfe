package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.demand.SpliceCard.How;
import bitterend.exchange.AnswerJson;
import bitterend.exchange.Shop;
import bitterend.finding.CommandWord;
import bitterend.measure.Written;
import bitterend.report.FindingsPage;
import bitterend.report.MeasuredPage;
import bitterend.report.page.Block;
import bitterend.report.page.Document;
import bitterend.report.page.Writing;
import bitterend.stock.LedgerException;
import bitterend.work.ShopNow;
import bitterend.work.orders.MeasureFinished;
import bitterend.work.orders.MeasureFinished.Boxes;
import bitterend.work.orders.MeasureFinished.By;
import bitterend.work.orders.MeasureFinished.Cut;
import bitterend.work.orders.MeasureFinished.Result;
import bitterend.work.orders.MeasureFinished.Said;
import bitterend.work.orders.PassPieces;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code measure SHOP PIECE}: a piece is made, measured and looked over; the boxes of a splice card. */
@Command(
        name = "measure",
        header = "Books what a finished piece measures, or that pieces were found good.",
        description = {
            "",
            "With --came-out: the boxes of a splice card. Adds a row to measured.csv, from",
            "which calibrate learns, and where the shop keeps a ledger books the piece as",
            "spliced, and as passed when it passes. A piece outside of what passes is booked",
            "only with --accepted, --respliced or --spoiled. Its tag says so, printed again.",
            "",
            "With --passed alone: these pieces were looked over and found good, unmeasured.",
            "",
            "stock undo takes either back, the row too.",
            ""
        },
        sortOptions = false)
final class MeasureCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private OrdersAccess at = new OrdersAccess();

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "PIECE", description = "Such as 1041/3.2.")
    private List<String> pieces = List.of();

    @Option(
            names = "--cut",
            paramLabel = "LENGTH",
            converter = Typed.RopeAsTyped.class,
            description = "What it was cut to. Default: as the ledger has it.")
    private Written cut = Written.NOTHING;

    @Option(
            names = "--rope",
            paramLabel = "ROPE",
            defaultValue = "",
            converter = Typed.Words.class,
            description =
                    "The rope it is of, when that is a substitute. Default: as the ledger has it, else as ordered.")
    private String rope = "";

    @Option(
            names = "--came-out",
            paramLabel = "LENGTH",
            converter = Typed.RopeAsTyped.class,
            description = "What it measures when it is made.")
    private @Nullable Written cameOut;

    @Option(
            names = "--how",
            paramLabel = "HOW",
            defaultValue = "slack",
            description = "slack on the floor, on its pins, or under the tension of the order. Default: slack.")
    private How how = How.SLACK;

    @Option(
            names = "--splicer",
            paramLabel = "NAME",
            defaultValue = "",
            converter = Typed.Words.class,
            description = "Who made it.")
    private String splicer = "";

    @Option(
            names = "--minutes",
            paramLabel = "MINUTES",
            converter = Typed.Minutes.class,
            description = "How long that took, such as 75: calibrate and quote compare show it.")
    private int minutes;

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private PageFiles files = new PageFiles();

    @ArgGroup
    private Looked looked = new Looked();

    /** What is said of it: that it passes, or what becomes of one that does not; one of these. */
    static final class Looked {
        @Option(names = "--passed", description = "It was looked over and found good.")
        private boolean passed;

        @Option(
                names = "--accepted",
                paramLabel = "NAME",
                converter = Typed.Words.class,
                description = "It does not pass; who accepts it.")
        private @Nullable String accepted;

        @Option(names = "--respliced", description = "It does not pass; it is to be spliced again.")
        private boolean respliced;

        @Option(names = "--spoiled", description = "It does not pass; it is to be made again.")
        private boolean spoiled;

        Said said() {
            if (accepted != null) {
                return Said.accepted(accepted.strip());
            }
            if (passed) {
                return Said.PASSED;
            }
            return respliced ? Said.RESPLICED : spoiled ? Said.SPOILED : Said.NOTHING;
        }
    }

    MeasureCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Written measured = cameOut;
        if (measured == null) {
            return passed();
        }
        if (pieces.size() > 1) {
            throw new LedgerException.Contradictory(
                    "what one piece came out at is no figure of " + pieces.size() + " pieces: measure them one by one");
        }
        Optional<ShopNow> read = at.read(terminal);
        return (read.isEmpty()
                        ? ExitCode.BAD_INPUT
                        : tell(book(read.get(), measured), read.get().shop()))
                .number();
    }

    private int passed() {
        if (!looked.said().equals(Said.PASSED)) {
            throw new LedgerException.Contradictory(
                    "say with --came-out what the piece measures, or with --passed that it was looked over and found good");
        }
        return at.book(terminal, (desk, read) -> new PassPieces(desk).passed(pieces, at.note.text));
    }

    private Result book(ShopNow now, Written measured) {
        Boxes boxes = new Boxes(
                pieces.get(0),
                new Cut(cut, rope.strip()),
                measured,
                how,
                new By(splicer.strip(), minutes),
                day.of(now.shop()),
                looked.said());
        if (at.at.who == null && !splicer.isBlank()) {
            at.at.who = splicer.strip();
        }
        return MeasureFinished.book(now, boxes, at.note.caller(at.at), at.note.text);
    }

    private Document takenBack(long event) {
        Writing below = new Writing();
        if (event != 0) {
            below.paragraph("A wrong figure is taken back with:");
            below.line(
                    Block.Line.Weight.PLAIN,
                    "  bitterend stock undo " + CommandWord.of(at.at.folder.toString()) + " " + event);
            below.paragraph("Event " + event + ".");
        }
        return below.document();
    }

    private ExitCode shown(Result.Booked booked, MeasuredPage pages, Shop read) {
        Boxes boxes = booked.boxes();
        Document page = pages.booked(
                boxes.piece(),
                boxes.cameOut(),
                booked.verdict(),
                booked.wanted(),
                boxes.by().minutes());
        Answer answer = new Answer(
                () -> AnswerJson.measured(
                        boxes.piece(),
                        booked.verdict(),
                        booked.wanted(),
                        boxes.by().minutes(),
                        booked.event(),
                        read.settings().units()),
                () -> page.titled(
                        "Measured", "Piece " + boxes.piece(), read.settings().name()),
                Optional.of(() -> page.with(takenBack(booked.event()))));
        files.show(terminal, at.at.common.json, answer);
        return ExitCode.DONE;
    }

    private ExitCode tell(Result result, Shop read) {
        MeasuredPage page = new MeasuredPage(at.at.units.figures(read));
        if (result instanceof Result.Booked booked) {
            return shown(booked, page, read);
        }
        if (result instanceof Result.Outside found) {
            terminal.err()
                    .print(page.outside(found.boxes().piece(), found.boxes().cameOut(), found.wanted()));
            return ExitCode.BAD_COMMAND_LINE;
        }
        if (result instanceof Result.NotWritten faults) {
            terminal.err().print(FindingsPage.text(faults.findings(), terminal.ink()));
            return ExitCode.BAD_INPUT;
        }
        terminal.err().println("error: " + ((Result.Refused) result).why() + "; nothing was booked");
        return ExitCode.BAD_INPUT;
    }
}
