package bitterend.cli;

import bitterend.measure.Length;
import bitterend.stock.Movement;
import bitterend.work.Booking;
import bitterend.work.rack.SpoilPiece;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock spoil}: a piece went wrong at the bench. */
@Command(
        name = "spoil",
        header = "Books a spoiled piece: its rope comes back, it is to be made again.",
        description = {"", "The next plan has the piece in it again.", ""},
        sortOptions = false)
final class StockSpoilCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", paramLabel = "PIECE", description = "Such as 1041/3.2.")
    private String piece = "";

    @Option(
            names = "--back",
            paramLabel = "LENGTH",
            converter = Typed.Allowance.class,
            defaultValue = "0 mm",
            description = "Sound rope that goes back to the rack. Default: none.")
    private Length back = Length.ZERO;

    @Mixin
    private StockNote note = new StockNote();

    StockSpoilCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Booking booking = new SpoilPiece(at.desk(note)).spoil(piece, back);
        int code = at.booked(terminal, booking);
        List<Movement> movements = StockAccess.done(booking).event().movements();
        if (movements.size() > 1) {
            Movement coil = movements.get(movements.size() - 1);
            at.say(terminal, "label:\n" + at.page().label(coil.entry().after()));
        }
        at.say(terminal, "piece " + piece + " is to be made again.\n");
        return code;
    }
}
