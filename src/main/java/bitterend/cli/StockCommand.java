package bitterend.cli;

import bitterend.exchange.ReelsText;
import bitterend.exchange.Shop;
import bitterend.exchange.StockJson;
import bitterend.measure.Length;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import bitterend.store.SqliteLedger;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock ...}: the ledger of the rack. Each method is a command. */
@Command(
        name = "stock",
        header = "Keeps the ledger of the rack: what came, was cut, kept, counted.",
        synopsisSubcommandLabel = "COMMAND",
        description = {
            "",
            "The ledger is the file stock.db in the shop folder. Once it is there, plan uses",
            "it instead of reels.csv. Movements are added and never changed; what is wrong is",
            "taken back with undo.",
            ""
        },
        commandListHeading = "%nCommands:%n")
final class StockCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    boolean help;

    StockCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        new CommandLine(new StockCommand(terminal)).usage(terminal.err());
        return ExitCode.BAD_COMMAND_LINE.number();
    }

    @Command(name = "open", header = "Begins the ledger with the reels of reels.csv.")
    int open(@Mixin StockAccess at) {
        ShopArgument shop = new ShopArgument();
        shop.folder = at.folder;
        Optional<Shop> read = shop.readFiles(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        List<Reel> reels = read.get().reels();
        Event.Act begun = Event.Act.of(Event.Kind.OPENED, at.who(), "").with("reels", "" + reels.size());
        SqliteLedger.create(
                at.folder,
                at.clock(),
                begun,
                books -> reels.forEach(reel -> books.append(
                        new Movement.Entry(Movement.Kind.RECEIVED, reel, "on the rack when the ledger was begun"))));
        terminal.out()
                .println(at.folder.resolve(SqliteLedger.NAME) + " holds " + reels.size()
                        + " reels now; reels.csv is no longer read.");
        return ExitCode.DONE.number();
    }

    @Command(name = "list", header = "Lists what is on the rack.")
    int list(
            @Mixin StockAccess at,
            @Option(names = "--all", description = "Also reels of which nothing is left.") boolean all) {
        List<Holding> holdings = at.reading(ledger -> ledger.read(Ledger.Stock::holdings)).stream()
                .filter(holding -> all || !holding.gone())
                .toList();
        terminal.out()
                .print(at.common.json ? StockJson.rack(holdings) : at.page().rack(holdings));
        return ExitCode.DONE.number();
    }

    @Command(name = "count", header = "Books a new figure for the length of a reel.")
    int count(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "REEL") String reel,
            @Parameters(index = "2", paramLabel = "LENGTH", converter = LengthOption.class) Length length,
            @Option(
                            names = "--uncertainty",
                            paramLabel = "LENGTH",
                            converter = LengthOption.class,
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

    @Command(name = "hold", header = "Puts a reel on hold: it is not cut.")
    int hold(@Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel, @Mixin StockNote note) {
        return booked(at, note, rack -> rack.hold(reel, note.text));
    }

    @Command(name = "release", header = "Ends a hold or a reservation.")
    int release(
            @Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel, @Mixin StockNote note) {
        return booked(at, note, rack -> rack.release(reel, note.text));
    }

    @Command(name = "reserve", header = "Keeps a reel for one order.")
    int reserve(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "REEL") String reel,
            @Parameters(index = "2", paramLabel = "ORDER") String order,
            @Mixin StockNote note) {
        return booked(at, note, rack -> rack.reserve(reel, order, note.text));
    }

    @Command(name = "move", header = "Books a reel to another place.")
    int move(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "REEL") String reel,
            @Parameters(index = "2", paramLabel = "PLACE") String place,
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
            @Parameters(index = "2", paramLabel = "LENGTH", converter = LengthOption.class) Length length,
            @Parameters(index = "3", paramLabel = "NEW-REEL") String newReel,
            @Mixin StockNote note) {
        return booked(at, note, rack -> rack.split(reel, length, newReel, note.text));
    }

    @Command(name = "return", header = "Books a reel that goes back to its supplier or owner.")
    int giveBack(
            @Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel, @Mixin StockNote note) {
        return booked(at, note, rack -> rack.remove(Movement.Kind.RETURNED, reel, note.text));
    }

    @Command(name = "sell", header = "Books a reel sold as it is.")
    int sell(@Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel, @Mixin StockNote note) {
        return booked(at, note, rack -> rack.remove(Movement.Kind.SOLD, reel, note.text));
    }

    @Command(name = "condemn", header = "Writes a reel off.")
    int condemn(
            @Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel, @Mixin StockNote note) {
        return booked(at, note, rack -> rack.remove(Movement.Kind.CONDEMNED, reel, note.text));
    }

    @Command(name = "history", header = "Lists every movement of a reel.")
    int history(@Mixin StockAccess at, @Parameters(index = "1", paramLabel = "REEL") String reel) {
        List<Movement> history = at.reading(ledger -> ledger.read(stock -> stock.history(reel)));
        if (history.isEmpty()) {
            throw new LedgerException.Refused("there is no reel " + reel + "; see stock list --all");
        }
        return at.booked(terminal, history);
    }

    @Command(name = "export", header = "Prints the rack in the form of reels.csv.")
    int export(@Mixin StockAccess at) {
        List<Reel> reels = at.reading(ledger -> ledger.read(Ledger.Stock::holdings)).stream()
                .filter(holding -> !holding.gone())
                .map(Holding::reel)
                .toList();
        terminal.out().print(ReelsText.csv(reels));
        return ExitCode.DONE.number();
    }

    @Command(name = "backup", header = "Copies the ledger into a new file, while others work.")
    int backup(@Mixin StockAccess at, @Parameters(index = "1", paramLabel = "FILE") Path file) {
        at.reading(ledger -> {
            ledger.backup(file);
            return true;
        });
        terminal.out().println("the ledger as it is now stands in " + file);
        return ExitCode.DONE.number();
    }

    @Command(name = "verify", header = "Adds the whole ledger up again and says what is wrong.")
    int verify(@Mixin StockAccess at) {
        List<String> faults = at.writing(Ledger::verify);
        faults.forEach(fault -> terminal.err().println("error: " + fault));
        if (!faults.isEmpty()) {
            terminal.err().println("the ledger is damaged: put it aside, and use a backup");
            return ExitCode.BAD_INPUT.number();
        }
        terminal.out().println("the ledger is sound: every sum agrees.");
        return ExitCode.DONE.number();
    }

    private int booked(StockAccess at, StockNote note, Function<Rack, Event> work) {
        Event event = at.writing(ledger -> work.apply(new Rack(ledger, note.caller(at))));
        return at.booked(terminal, event.movements());
    }
}
