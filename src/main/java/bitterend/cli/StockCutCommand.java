package bitterend.cli;

import bitterend.measure.Length;
import bitterend.stock.Event;
import bitterend.stock.LedgerException.Contradictory;
import bitterend.stock.Movement;
import bitterend.work.Booking;
import bitterend.work.ShopNow;
import bitterend.work.rack.CutOffPlan;
import bitterend.work.rack.CutOffPlan.Use;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock cut SHOP REEL LENGTH}: a cut that is in no plan. */
@Command(
        name = "cut",
        header = "Books a cut that is in no plan, or off another reel than planned.",
        description = {
            "",
            "Over the counter:            stock cut SHOP R-104 \"12 m\" --for \"Harbour Board\"",
            "A piece off another reel:    stock cut SHOP R-105 \"12.4 m\" --piece 1001/1.1",
            "A piece no order asks for:   stock cut SHOP R-105 \"12.4 m\" --spare 1001/1.1",
            "A sample for a break test:   stock cut SHOP R-104 \"2 m\" --sample \"lot test\"",
            "",
            "LENGTH is what came off, measured; the loss of the cut is added.",
            ""
        },
        sortOptions = false)
final class StockCutCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", paramLabel = "REEL")
    private String reel = "";

    @Parameters(index = "2", paramLabel = "LENGTH", converter = Typed.Rope.class)
    private Length length = Length.ZERO;

    @Option(names = "--for", paramLabel = "NAME", converter = Typed.Words.class, description = "Sold to.")
    private @Nullable String customer;

    @Option(names = "--piece", paramLabel = "PIECE", description = "The piece it is, such as 1041/3.2.")
    private @Nullable String piece;

    @Option(
            names = "--spare",
            paramLabel = "NAME",
            converter = Typed.Words.class,
            description = "What it was cut for, though no order may be made of it: it is a spare piece.")
    private @Nullable String spare;

    @Option(names = "--sample", paramLabel = "WHY", converter = Typed.Words.class, description = "Used up as a sample.")
    private @Nullable String sample;

    @Option(
            names = "--sure",
            description = "It may reach over a flaw, be far off what the piece needs, or be sold past its last day.")
    private boolean sure;

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private StockNote note = new StockNote();

    StockCutCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        long asked = Stream.of(customer, piece, spare, sample)
                .filter(java.util.Objects::nonNull)
                .count();
        if (asked != 1) {
            throw new Contradictory("say what the cut is: --for NAME, --piece PIECE, --spare NAME or --sample WHY");
        }
        Use use = use();
        Optional<ShopNow> read = at.shop().readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Booking booking = new CutOffPlan(at.desk(note), read.get())
                .cut(new CutOffPlan.Request(
                        reel, length, use, sure, day.of(read.get().shop())));
        int code = at.booked(terminal, booking);
        tellShort(StockAccess.done(booking).event());
        return code;
    }

    private Use use() {
        if (customer != null) {
            return new Use.SoldTo(customer);
        }
        if (piece != null) {
            return new Use.OrderedPiece(piece);
        }
        return spare != null ? new Use.Spare(spare) : new Use.Sample("" + sample);
    }

    private void tellShort(Event event) {
        event.movements().stream()
                .filter(movement -> movement.entry().kind() == Movement.Kind.CUT_SPARE)
                .forEach(movement -> at.say(terminal, StockPostCommand.spareSentence(movement)));
        event.movements().stream()
                .filter(movement -> movement.entry().kind() == Movement.Kind.CUT_SHORT)
                .forEach(movement -> at.say(terminal, StockPostCommand.shortSentence(movement)));
    }
}
