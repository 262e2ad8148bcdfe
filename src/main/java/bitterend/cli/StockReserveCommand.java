package bitterend.cli;

import bitterend.measure.Length;
import bitterend.stock.Held;
import bitterend.stock.LedgerException.Contradictory;
import bitterend.work.ShopNow;
import bitterend.work.rack.HoldRope;
import bitterend.work.rack.RackWork;
import bitterend.work.rack.WorkReel;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock reserve SHOP REEL [ORDER]}: a reel that is kept for an order, or rope of it for an order or a customer. */
@Command(
        name = "reserve",
        header = "Keeps a reel, or so much of it, for an order or a customer.",
        description = {
            "",
            "The whole reel for an order:       stock reserve SHOP R-104 1041",
            "So much of it until a day:         stock reserve SHOP R-104 1041",
            "                                     --length \"50 m\" --until 2026-03-05",
            "For a customer's orders to come:   stock reserve SHOP R-104",
            "                                     --customer \"Harbour Board\"",
            "                                     --length \"50 m\" --until 2026-03-05",
            "",
            "What is held is cut for no other. It ends with stock release, stock undo, or the",
            "day that passes; said again for the same, the new length and day count. A hold",
            "of the whole reel stays.",
            ""
        },
        sortOptions = false)
final class StockReserveCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", paramLabel = "REEL")
    private String reel = "";

    @Parameters(index = "2", arity = "0..1", paramLabel = "ORDER", converter = Typed.OrderId.class)
    private String order = "";

    @Option(
            names = "--length",
            paramLabel = "LENGTH",
            converter = Typed.Rope.class,
            description = "So much of the reel, as long as the pieces are cut.")
    private @Nullable Length length;

    @Option(
            names = "--until",
            paramLabel = "DATE",
            converter = Typed.Day.class,
            description = "The last day on which it is held.")
    private @Nullable LocalDate until;

    @Option(
            names = "--customer",
            paramLabel = "NAME",
            converter = Typed.Words.class,
            description = "For every order of this customer.")
    private String customer = "";

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private StockNote note = new StockNote();

    StockReserveCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (order.isEmpty() == customer.isEmpty()) {
            throw new Contradictory("say whom it is kept for: an ORDER, or --customer NAME");
        }
        if (length == null) {
            return whole();
        }
        if (until == null) {
            throw new Contradictory("say the last day on which it is held: --until DATE");
        }
        Optional<ShopNow> read = at.shop().readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Held.For kind = customer.isEmpty() ? Held.For.ORDER : Held.For.CUSTOMER;
        return at.booked(
                terminal,
                new HoldRope(at.desk(note), read.get())
                        .hold(new HoldRope.Request(
                                reel,
                                length,
                                kind,
                                order + customer,
                                until,
                                day.of(read.get().shop()))));
    }

    private int whole() {
        return at.booked(terminal, new WorkReel(at.desk(note)).book(new RackWork.Reserve(reel, order)));
    }
}
