package bitterend.cli;

import bitterend.measure.Written;
import bitterend.work.rack.LookAlikes;
import bitterend.work.rack.RackWork;
import bitterend.work.rack.WorkReel;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock ...}: what is done with a reel as a whole. Each method is a command, and a command of what extends it. */
@Command(addMethodSubcommands = false)
abstract class StockReels extends StockFiles {
    private final Terminal terminal;

    StockReels(Terminal terminal) {
        super(terminal);
        this.terminal = terminal;
    }

    @Command(name = "hold", header = "Puts a reel on hold: it is not cut. Whom it is kept for stays.")
    int hold(@Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel, @Mixin StockNote note) {
        return booked(at, note, new RackWork.Hold(reel));
    }

    @Command(
            name = "release",
            header = "Ends a hold, else a reservation, else what is held of a reel.",
            description = {"", "With --for what is held for one order or customer, whatever else the reel is.", ""})
    int release(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "REEL") String reel,
            @Option(
                            names = "--for",
                            paramLabel = "NAME",
                            converter = Typed.Words.class,
                            description = "Only what is held for this order or customer.")
                    @Nullable
                    String whom,
            @Mixin StockNote note) {
        return booked(at, note, whom == null ? new RackWork.Release(reel) : new RackWork.ReleaseRope(reel, whom));
    }

    @Command(name = "move", header = "Books a reel to another place.")
    int move(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "REEL") String reel,
            @Parameters(index = "2", paramLabel = "PLACE", converter = Typed.Words.class) String place,
            @Mixin StockNote note) {
        return booked(at, note, new RackWork.Move(reel, place));
    }

    @Command(name = "rewind", header = "Books a reel wound over: its inner end is outside now.")
    int rewind(
            @Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel, @Mixin StockNote note) {
        return booked(at, note, new RackWork.Rewind(reel));
    }

    @Command(name = "split", header = "Takes a length off a reel onto one of its own.")
    int split(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "REEL") String reel,
            @Parameters(index = "2", paramLabel = "LENGTH", converter = Typed.RopeAsTyped.class) Written length,
            @Parameters(index = "3", paramLabel = "NEW-REEL", converter = Typed.ReelId.class) String newReel,
            @Mixin StockNote note) {
        new LookAlikes(at.access()).reel(newReel).ifPresent(warning -> StockAccess.warn(terminal, warning));
        return booked(at, note, new RackWork.Split(reel, length, newReel));
    }

    @Command(name = "return", header = "Books a reel that goes back to its supplier or owner.")
    int giveBack(
            @Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel, @Mixin StockNote note) {
        return booked(at, note, new RackWork.GiveBack(reel));
    }

    @Command(name = "sell", header = "Books a reel sold as it is.")
    int sell(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "REEL") String reel,
            @Option(names = "--sure", description = "It may be past its last day.") boolean sure,
            @Mixin StockNote note) {
        return booked(at, note, new RackWork.Sell(reel, sure));
    }

    @Command(name = "condemn", header = "Writes a reel off.")
    int condemn(
            @Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel, @Mixin StockNote note) {
        return booked(at, note, new RackWork.Condemn(reel));
    }

    @Command(name = "send", header = "Books a reel that goes to another loft of the shop.")
    int send(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "REEL") String reel,
            @Parameters(index = "2", paramLabel = "LOFT", converter = Typed.Words.class) String loft,
            @Mixin StockNote note) {
        return booked(at, note, new RackWork.Send(reel, loft));
    }

    private int booked(StockAccess at, StockNote note, RackWork work) {
        return at.booked(terminal, new WorkReel(at.desk(note)).book(work));
    }
}
