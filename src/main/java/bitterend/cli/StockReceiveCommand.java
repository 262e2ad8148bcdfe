package bitterend.cli;

import bitterend.exchange.Shop;
import bitterend.measure.Length;
import bitterend.packing.Words;
import bitterend.stock.Event;
import bitterend.stock.LedgerException;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
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
            "is --tolerance 2: so much of the length is booked as uncertain, and plans do not",
            "count on it.",
            ""
        },
        sortOptions = false)
final class StockReceiveCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", paramLabel = "REEL", description = "Its new id.")
    private String reel = "";

    @Parameters(index = "2", paramLabel = "ROPE", description = "Id of the rope in ropes.json.")
    private String rope = "";

    @Parameters(index = "3", paramLabel = "LENGTH", converter = LengthOption.class)
    private Length length = Length.ZERO;

    @Option(names = "--lot", paramLabel = "LOT", defaultValue = "", description = "Production run.")
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
            description = "Delivered length may be so much short. Default: ${DEFAULT-VALUE}.")
    private int tolerance;

    @Option(
            names = "--inner-wraps",
            paramLabel = "LENGTH",
            converter = LengthOption.class,
            defaultValue = "0 mm",
            description = "Innermost rope that cannot be used. Default: ${DEFAULT-VALUE}.")
    private Length innerWraps = Length.ZERO;

    @Option(names = "--certificate", paramLabel = "KIND", defaultValue = "", description = "Kind of certificate.")
    private String certificate = "";

    @Option(names = "--certificate-number", paramLabel = "NUMBER", defaultValue = "", description = "Its number.")
    private String number = "";

    @Option(names = "--use-by", paramLabel = "DATE", converter = DayText.class, description = "Last day to cut it.")
    private @Nullable LocalDate useBy;

    @Option(names = "--received", paramLabel = "DATE", converter = DayText.class, description = "Default: today.")
    private @Nullable LocalDate received;

    @Option(names = "--owner", paramLabel = "NAME", defaultValue = "", description = "Customer whose own rope it is.")
    private String owner = "";

    @Option(names = "--order", paramLabel = "ORDER", defaultValue = "", description = "Order of that customer.")
    private String order = "";

    @Option(names = "--place", paramLabel = "PLACE", defaultValue = "", description = "Where it stands.")
    private String place = "";

    @Option(names = "--part", description = "A part reel: it has been cut from before.")
    private boolean part;

    @Mixin
    private StockNote note = new StockNote();

    StockReceiveCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        ShopArgument shop = new ShopArgument();
        shop.folder = at.folder;
        Optional<Shop> read = shop.readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Reel coming = coming(read.get());
        Event event = at.writing(ledger -> new Rack(ledger, note.caller(at)).receive(coming, note.text));
        int code = at.booked(terminal, event.movements());
        at.say(terminal, at.page().label(coming));
        return code;
    }

    private Reel coming(Shop shop) {
        if (shop.catalogue().findRope(rope).isEmpty()) {
            throw new LedgerException.Refused("there is no rope " + rope + " in ropes.json");
        }
        if (!reel.matches("[\\p{L}\\p{N}][\\p{L}\\p{N} ._#+/()-]{0,39}")) {
            throw new LedgerException.Refused(
                    "'" + reel + "' is no id for a reel: at most 40 letters, digits, blanks and . _ # + / ( ) -");
        }
        if (!length.isPositive() || tolerance < 0 || tolerance > 50 || innerWraps.isNegative()) {
            throw new LedgerException.Refused(
                    "a reel needs a length above nothing (" + Words.of(length) + "), a tolerance from 0 to 50 %");
        }
        if (owner.isEmpty() != order.isEmpty()) {
            throw new LedgerException.Refused("a customer's own rope needs both --owner and --order");
        }
        Length uncertainty = new Length(-Math.floorDiv(-length.mm() * tolerance, 100L));
        LocalDate today = LocalDate.now(at.clock().withZone(ZoneId.systemDefault()));
        return new Reel(
                reel,
                rope,
                lot,
                new Reel.Contents(length, uncertainty, Length.ZERO, innerWraps, known),
                List.of(),
                new Reel.Papers(
                        certificate,
                        number,
                        useBy == null ? LocalDate.MAX : useBy,
                        received == null ? today : received),
                new Reel.Custody(owner, Reel.State.FREE, order),
                !part,
                new Reel.Where(place, bitterend.measure.Mass.ZERO, Reel.Draw.OUTSIDE));
    }
}
