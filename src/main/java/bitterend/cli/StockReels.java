package bitterend.cli;

import bitterend.measure.Length;
import bitterend.measure.Written;
import bitterend.stock.Event;
import bitterend.stock.Movement;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock ...}: what is done with a reel as a whole. Each method is a command, and a command of what extends it. */
abstract class StockReels extends StockFiles {
    private final Terminal terminal;

    StockReels(Terminal terminal) {
        super(terminal);
        this.terminal = terminal;
    }

    @Command(name = "count", header = "Books a new figure for the length of a reel.")
    int count(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "REEL") String reel,
            @Parameters(index = "2", paramLabel = "LENGTH", converter = Typed.RopeAsTyped.class) Written length,
            @Option(
                            names = "--uncertainty",
                            paramLabel = "LENGTH",
                            converter = Typed.Allowance.class,
                            defaultValue = "0 mm",
                            description = "How much shorter it may really be. Default: ${DEFAULT-VALUE}.")
                    Length uncertainty,
            @Option(
                            names = "--known",
                            paramLabel = "HOW",
                            defaultValue = "COUNTED",
                            description = "How it is known: ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
                    Reel.Known known,
            @Mixin StockNote note) {
        return booked(at, note, rack -> rack.count(reel, length, uncertainty, known, note.text));
    }

    @Command(name = "hold", header = "Puts a reel on hold: it is not cut. Whom it is kept for stays.")
    int hold(@Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel, @Mixin StockNote note) {
        return kept(at, note, rack -> rack.hold(reel, note.text));
    }

    @Command(name = "release", header = "Ends a hold; of a reel that is not on hold, its reservation.")
    int release(
            @Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel, @Mixin StockNote note) {
        return kept(at, note, rack -> rack.release(reel, note.text));
    }

    @Command(name = "reserve", header = "Keeps a reel for one order. A hold stays.")
    int reserve(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "REEL") String reel,
            @Parameters(index = "2", paramLabel = "ORDER", converter = Typed.OrderId.class) String order,
            @Mixin StockNote note) {
        return kept(at, note, rack -> rack.reserve(reel, order, note.text));
    }

    @Command(name = "move", header = "Books a reel to another place.")
    int move(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "REEL") String reel,
            @Parameters(index = "2", paramLabel = "PLACE", converter = Typed.Words.class) String place,
            @Mixin StockNote note) {
        return booked(at, note, rack -> rack.move(reel, place, note.text));
    }

    @Command(name = "rewind", header = "Books a reel wound over: its inner end is outside now.")
    int rewind(
            @Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel, @Mixin StockNote note) {
        return booked(at, note, rack -> rack.rewind(reel, note.text));
    }

    @Command(name = "split", header = "Takes a length off a reel onto one of its own.")
    int split(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "REEL") String reel,
            @Parameters(index = "2", paramLabel = "LENGTH", converter = Typed.RopeAsTyped.class) Written length,
            @Parameters(index = "3", paramLabel = "NEW-REEL", converter = Typed.ReelId.class) String newReel,
            @Mixin StockNote note) {
        at.warnOfLookAlikes(terminal, newReel);
        return booked(at, note, rack -> rack.split(reel, length, newReel, note.text));
    }

    @Command(name = "return", header = "Books a reel that goes back to its supplier or owner.")
    int giveBack(
            @Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel, @Mixin StockNote note) {
        return removed(at, Movement.Kind.RETURNED, reel, note);
    }

    @Command(name = "sell", header = "Books a reel sold as it is.")
    int sell(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "REEL") String reel,
            @Option(names = "--sure", description = "It may be past its last day.") boolean sure,
            @Mixin StockNote note) {
        LocalDate day = sure ? LocalDate.MIN : LocalDate.now(ZoneId.systemDefault());
        return booked(at, note, rack -> rack.sell(reel, note.text, day));
    }

    @Command(name = "condemn", header = "Writes a reel off.")
    int condemn(
            @Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel, @Mixin StockNote note) {
        return removed(at, Movement.Kind.CONDEMNED, reel, note);
    }

    @Command(name = "send", header = "Books a reel that goes to another loft of the shop.")
    int send(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "REEL") String reel,
            @Parameters(index = "2", paramLabel = "LOFT", converter = Typed.Words.class) String loft,
            @Mixin StockNote note) {
        String words = note.text.isEmpty() ? "to " + loft : "to " + loft + ": " + note.text;
        return booked(at, note, rack -> rack.remove(Movement.Kind.SENT, reel, words));
    }

    private int removed(StockAccess at, Movement.Kind kind, String reel, StockNote note) {
        return booked(at, note, rack -> rack.remove(kind, reel, note.text));
    }

    /** Books a hold, a release or a reservation, and says what of the other is still there. */
    private int kept(StockAccess at, StockNote note, Function<Rack, Event> work) {
        Event event = at.writing(ledger -> work.apply(new Rack(ledger, note.caller(at))));
        int code = at.booked(terminal, event.movements());
        for (Movement movement : event.movements()) {
            Reel reel = movement.entry().after();
            String order = reel.custody().order();
            if (reel.custody().isReserved() && movement.entry().kind() != Movement.Kind.RESERVED) {
                at.say(terminal, "reel " + reel.id() + " is still kept for order " + order + "\n");
            } else if (reel.custody().isOnHold() && movement.entry().kind() == Movement.Kind.RESERVED) {
                at.say(terminal, "reel " + reel.id() + " is still on hold: stock release ends that\n");
            }
        }
        return code;
    }

    private int booked(StockAccess at, StockNote note, Function<Rack, Event> work) {
        Event event = at.writing(ledger -> work.apply(new Rack(ledger, note.caller(at))));
        return at.booked(terminal, event.movements());
    }
}
