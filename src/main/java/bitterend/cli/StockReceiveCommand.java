package bitterend.cli;

import static java.util.Objects.requireNonNull;

import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import bitterend.stock.LedgerException.Contradictory;
import bitterend.stock.Paid;
import bitterend.stock.Reel;
import bitterend.work.ShopNow;
import bitterend.work.rack.ReceiveReel;
import bitterend.work.rack.ReceiveReel.Result;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code stock receive}: a reel that came in. */
@Command(
        name = "receive",
        header = "Books a reel that came in, or all that a supplier's list says.",
        description = {
            "",
            "One reel:             stock receive SHOP R-105 LAID-14 \"220 m\"",
            "A list, looked at:    stock receive SHOP --file came.csv",
            "Booked as one event:  stock receive SHOP --file came.csv --accept",
            "",
            "A list has a row for each reel: reel, rope, length, and where they help the",
            "other columns of reels.csv, tolerance, paid, and on order. What is far off the",
            "order or the usual reel, or of a lot that is there under another rope, is set",
            "apart, and booked with --sure alone. An id that is there already and a rope that",
            "nobody knows are never booked.",
            "",
            "LENGTH is what the label or the meter says. A supplier who may deliver 2 %% short",
            "is --tolerance \"2 %%\": so much of the length is booked as uncertain, and plans",
            "do not count on it.",
            ""
        },
        sortOptions = false)
final class StockReceiveCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Spec
    private @Nullable CommandSpec command;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "REEL",
            converter = Typed.ReelId.class,
            description = "Its new id.")
    private String reel = "";

    @Parameters(index = "2", arity = "0..1", paramLabel = "ROPE", description = "Id of the rope in ropes.json.")
    private String rope = "";

    @Parameters(index = "3", arity = "0..1", paramLabel = "LENGTH", converter = Typed.RopeAsTyped.class)
    private @Nullable Written length;

    @Option(names = "--file", paramLabel = "FILE", description = "What came, by a list: CSV or a workbook.")
    private @Nullable Path file;

    @Option(names = "--accept", description = "Book what the list says, all of it as one event.")
    private boolean accept;

    @Option(names = "--sure", description = "Book what is set apart and can be, too.")
    private boolean sure;

    @Option(
            names = "--lot",
            paramLabel = "LOT",
            defaultValue = "",
            converter = Typed.Lot.class,
            description = "Production run.")
    private String lot = "";

    @Option(
            names = "--known",
            paramLabel = "HOW",
            defaultValue = "NOMINAL",
            description = "How the length is known: ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
    private Reel.Known known = Reel.Known.NOMINAL;

    @Option(
            names = "--tolerance",
            paramLabel = "PERCENT",
            defaultValue = "0",
            converter = Typed.Tolerance.class,
            description = "Delivered length may be so much short, such as 1.5 %%. Default: ${DEFAULT-VALUE}.")
    private Ratio tolerance = Ratio.ZERO;

    @Option(
            names = "--uncertainty",
            paramLabel = "LENGTH",
            converter = Typed.Allowance.class,
            description = "The same as a length.")
    private @Nullable Length uncertainty;

    @Option(
            names = "--lead-trim",
            paramLabel = "LENGTH",
            converter = Typed.Allowance.class,
            defaultValue = "0 mm",
            description = "Worn outer end to cut off first. Default: ${DEFAULT-VALUE}.")
    private Length leadTrim = Length.ZERO;

    @Option(
            names = "--inner-wraps",
            paramLabel = "LENGTH",
            converter = Typed.Allowance.class,
            defaultValue = "0 mm",
            description = "Innermost rope that cannot be used. Default: ${DEFAULT-VALUE}.")
    private Length innerWraps = Length.ZERO;

    @Option(
            names = "--flaws",
            paramLabel = "FLAWS",
            defaultValue = "",
            converter = FlawsText.class,
            description = "As in reels.csv: 120 m to 121.5 m +/- 0.5 m: join; 180 m: cut strand.")
    private FlawsText.Flaws flaws = FlawsText.Flaws.NONE;

    @Option(
            names = "--certificate",
            paramLabel = "KIND",
            defaultValue = "",
            converter = Typed.Words.class,
            description = "Kind of certificate.")
    private String certificate = "";

    @Option(
            names = "--certificate-number",
            paramLabel = "NUMBER",
            defaultValue = "",
            converter = Typed.Words.class,
            description = "Its number.")
    private String number = "";

    @Option(names = "--use-by", paramLabel = "DATE", converter = Typed.Day.class, description = "Last day to cut it.")
    private @Nullable LocalDate useBy;

    @Option(
            names = "--received",
            paramLabel = "DATE",
            converter = Typed.Day.class,
            description = "The day it came. Default: the day in shop.json, else today.")
    private @Nullable LocalDate received;

    @Option(
            names = "--owner",
            paramLabel = "NAME",
            defaultValue = "",
            converter = Typed.Words.class,
            description = "Customer whose own rope it is.")
    private String owner = "";

    @Option(
            names = "--order",
            paramLabel = "ORDER",
            defaultValue = "",
            converter = Typed.OrderId.class,
            description = "Order of that customer.")
    private String order = "";

    @Option(
            names = "--on-order",
            paramLabel = "NUMBER",
            defaultValue = "",
            description = "The order of reels in on-order.csv that it is of; of a list, every row that names none.")
    private String onOrder = "";

    @Option(
            names = "--paid",
            paramLabel = "PRICE",
            description = "What was paid for the reel without freight, such as \"410 EUR\" or \"1.85 EUR/m\"."
                    + " Default: the price of its order.")
    private @Nullable String paid;

    @Option(
            names = "--freight",
            paramLabel = "AMOUNT",
            description = "What bringing the delivery cost; of a list, shared by what was paid for each reel.")
    private @Nullable String freight;

    @Option(
            names = "--place",
            paramLabel = "PLACE",
            defaultValue = "",
            converter = Typed.Words.class,
            description = "Where it is.")
    private String place = "";

    @Option(names = "--part", description = "A part reel: it has been cut from before.")
    private boolean part;

    @Option(
            names = "--reel-note",
            paramLabel = "TEXT",
            defaultValue = "",
            converter = Typed.Words.class,
            description = "What is to be known of the reel.")
    private String reelNote = "";

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private StockNote note = new StockNote();

    StockReceiveCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Written typed = length;
        Path list = file;
        if (list != null && !reel.isEmpty()) {
            throw new Contradictory("say what came in: a REEL, its ROPE and its LENGTH, or --file FILE with a list");
        }
        if (list == null && typed == null) {
            CommandSpec spec = requireNonNull(command);
            throw new ParameterException(spec.commandLine(), Misread.words(spec, place -> true));
        }
        return at.shop()
                .readOrComplain(terminal)
                .map(now -> list != null ? list().book(now, list) : one(now, requireNonNull(typed)))
                .orElse(ExitCode.BAD_INPUT.number());
    }

    private int one(ShopNow now, Written typed) {
        Paid said = TypedMoney.paid(
                paid, freight, typed.roundedDown(), now.shop().settings().money());
        Result result = new ReceiveReel(at.desk(note), now.shop()).receive(request(typed, said));
        result.warnings().forEach(warning -> StockAccess.warn(terminal, warning));
        if (result instanceof Result.NotReceived not) {
            throw Faults.of(not.why());
        }
        Result.Received received = (Result.Received) result;
        int code = at.booked(terminal, received.booked());
        at.say(terminal, at.page().label(received.reel()));
        return code;
    }

    private StockReceivedList list() {
        return new StockReceivedList(
                terminal, at, note, files, new StockReceivedList.Asked(onOrder, freight, accept, sure));
    }

    private ReceiveReel.Request request(Written typed, Paid said) {
        return new ReceiveReel.Request(
                reel,
                rope,
                lot,
                new ReceiveReel.Amount(typed, known, tolerance, uncertainty, leadTrim, innerWraps),
                flaws.list(),
                new ReceiveReel.Papers(certificate, number, useBy, received),
                new ReceiveReel.Owner(owner, order),
                !part,
                place,
                reelNote,
                onOrder,
                said);
    }
}
