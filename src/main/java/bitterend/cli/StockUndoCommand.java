package bitterend.cli;

import bitterend.stock.Event;
import bitterend.stock.LedgerException;
import bitterend.work.Booking;
import bitterend.work.rack.TakeBack;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock undo SHOP EVENT}: what one command booked is taken back, whole. */
@Command(
        name = "undo",
        header = "Takes back what one command booked, whole; or a posting.",
        description = {
            "",
            "EVENT is the number that stock history shows in its column event. All its",
            "movements are taken back together. When later events were built on it, they",
            "are listed and nothing is taken back.",
            "",
            "With --plan and --reel: all that was posted of that plan off that reel.",
            ""
        },
        sortOptions = false)
final class StockUndoCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", arity = "0..1", paramLabel = "EVENT", description = "As stock history numbers it.")
    private @Nullable Long number;

    @Option(names = "--plan", paramLabel = "PLAN", description = "The plan that was posted, as stock history names it.")
    private @Nullable String plan;

    @Option(names = "--reel", paramLabel = "REEL", description = "The reel it was posted off.")
    private @Nullable String reel;

    @Mixin
    private StockNote note = new StockNote();

    StockUndoCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        boolean posting = plan != null && reel != null && number == null;
        if (!posting && (number == null || plan != null || reel != null)) {
            throw new LedgerException.Contradictory(
                    "take back an EVENT, or else what was posted of a --plan off a --reel");
        }
        Event.Act act = note.caller(at).apply(Event.Act.of(Event.Kind.UNDONE, "", note.text));
        Long event = number;
        TakeBack verb = new TakeBack(at.access(), act);
        Booking.Booked back = StockAccess.done(event != null ? verb.event(event) : verb.posting("" + plan, "" + reel));
        back.told().forEach(line -> at.say(terminal, line + ".\n"));
        int code = back.event().movements().isEmpty() && !at.common.json
                ? ExitCode.DONE.number()
                : at.booked(terminal, back.event().movements());
        at.tellOfThePlan(terminal, back.event().movements());
        return code;
    }
}
