package bitterend.cli;

import bitterend.exchange.Shop;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import bitterend.stock.Reel;
import bitterend.work.ShopNow;
import bitterend.work.rack.ReceiveReel;
import bitterend.work.rack.ReceiveReel.Result;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock receive}: a reel that came in. */
@Command(
        name = "receive",
        header = "Books a reel that came in.",
        description = {
            "",
            "LENGTH is what the label or the meter says. A supplier who may deliver 2 %% short",
            "is --tolerance \"2 %%\": so much of the length is booked as uncertain, and plans do not",
            "count on it.",
            ""
        },
        sortOptions = false)
final class StockReceiveCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", paramLabel = "REEL", converter = Typed.ReelId.class, description = "Its new id.")
    private String reel = "";

    @Parameters(index = "2", paramLabel = "ROPE", description = "Id of the rope in ropes.json.")
    private String rope = "";

    @Parameters(index = "3", paramLabel = "LENGTH", converter = Typed.RopeAsTyped.class)
    private Written length = Written.NOTHING;

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

    @Option(names = "--received", paramLabel = "DATE", converter = Typed.Day.class, description = "Default: today.")
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
            description = "The order of reels in on-order.csv that it is of.")
    private String onOrder = "";

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
    private StockNote note = new StockNote();

    StockReceiveCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<Shop> read = at.shop().readOrComplain(terminal).map(ShopNow::shop);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Result result = new ReceiveReel(at.desk(note), read.get()).receive(request());
        result.warnings().forEach(warning -> StockAccess.warn(terminal, warning));
        if (result instanceof Result.NotReceived not) {
            throw Faults.of(not.why());
        }
        Result.Received received = (Result.Received) result;
        int code = at.booked(terminal, received.booked());
        at.say(terminal, at.page().label(received.reel()));
        return code;
    }

    private ReceiveReel.Request request() {
        return new ReceiveReel.Request(
                reel,
                rope,
                lot,
                new ReceiveReel.Amount(length, known, tolerance, uncertainty, leadTrim, innerWraps),
                flaws.list(),
                new ReceiveReel.Papers(certificate, number, useBy, received),
                new ReceiveReel.Owner(owner, order),
                !part,
                place,
                reelNote,
                onOrder);
    }
}
