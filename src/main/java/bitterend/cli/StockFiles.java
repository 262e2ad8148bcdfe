package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.ReelsExport;
import bitterend.exchange.Shop;
import bitterend.exchange.StockJson;
import bitterend.report.FindingsPage;
import bitterend.stock.Balance;
import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.Reel;
import bitterend.store.LedgerRestore;
import bitterend.store.SqliteLedger;
import bitterend.work.ShopNow;
import bitterend.work.rack.BeginLedger;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** {@code stock ...}: the ledger as a file. Each method is a command, and a command of what extends it. */
abstract class StockFiles {
    private final Terminal terminal;

    StockFiles(Terminal terminal) {
        this.terminal = terminal;
    }

    @Command(name = "open", header = "Begins the ledger with the reels of reels.csv.")
    int open(@Mixin StockAccess at) {
        ShopArgument shop = new ShopArgument();
        shop.folder = at.folder;
        Optional<Shop> read = shop.readFiles(terminal).map(ShopNow::shop);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Head head = new BeginLedger(shop.access()).begin(read.get(), at.who());
        Path file = at.folder.resolve(shop.access().ledger().name());
        String told = file + " holds " + read.get().reels().size() + " reels now; reels.csv is no longer read.\n";
        terminal.out().print(at.common.json ? StockJson.ledger(file, head, "") : told);
        return ExitCode.DONE.number();
    }

    @Command(name = "export", header = "Prints the rack in the form of reels.csv.")
    int export(@Mixin StockAccess at) {
        return at.reading(ledger -> ledger.read(stock -> {
            List<Reel> reels = stock.holdings().stream()
                    .filter(holding -> !holding.gone())
                    .map(Holding::reel)
                    .toList();
            ReelsExport table = ReelsExport.of(reels);
            terminal.out().print(at.common.json ? StockJson.rack(stock.holdings()) : table.csv());
            terminal.err().println("head of the ledger: " + stock.head().text());
            if (at.common.json || table.leftOut().isEmpty()) {
                return ExitCode.DONE.number();
            }
            terminal.err().print(FindingsPage.text(table.leftOut(), terminal.ink()));
            return ExitCode.NOT_ALL_PLANNED.number();
        }));
    }

    @Command(name = "backup", header = "Copies the ledger into a new file, while others work.")
    int backup(@Mixin StockAccess at, @Parameters(index = "1", paramLabel = "FILE") Path file) {
        Head head = at.reading(ledger -> ledger.backup(file));
        terminal.out()
                .print(
                        at.common.json
                                ? StockJson.ledger(file, head, "")
                                : "the ledger as it is now stands in " + file + "\n" + told(head));
        return ExitCode.DONE.number();
    }

    @Command(
            name = "restore",
            header = "Puts a backup in the place of the ledger.",
            description = {
                "",
                "The backup is looked through first. The ledger that is there is kept beside it",
                "as stock.db-replaced-..., its journal too. Nobody else may be booking.",
                ""
            })
    int restore(
            @Mixin StockAccess at,
            @Parameters(index = "1", paramLabel = "FILE", description = "Made by stock backup.") Path file,
            @Option(
                            names = "--other-ledger",
                            description = "The backup may be of another ledger than the one that is there.")
                    boolean other,
            @Mixin StockNote note) {
        Event.Act act = note.caller(at).apply(Event.Act.of(Event.Kind.RESTORED, "", note.text));
        LedgerRestore.Restored restored = new LedgerRestore(at.folder, at.clock())
                .from(file, other ? LedgerRestore.Whose.ANY : LedgerRestore.Whose.ITS_OWN, act);
        String aside = restored.aside().map(Path::toString).orElse("");
        String told = "the ledger is that of " + file + " now\n"
                + (aside.isEmpty() ? "" : "the one that was there is kept as " + aside + "\n")
                + told(restored.head());
        terminal.out()
                .print(
                        at.common.json
                                ? StockJson.ledger(at.folder.resolve(SqliteLedger.NAME), restored.head(), aside)
                                : told);
        return ExitCode.DONE.number();
    }

    private static String told(Head head) {
        return "head of the ledger: " + head.text() + "\n";
    }

    @Command(
            name = "verify",
            header = "Adds the whole ledger up again and says what is wrong.",
            description = {
                "",
                "Follows the chain of events, adds up every reel, and checks that no rope was",
                "made or lost. That the end of the ledger was cut off, or an older copy put back,",
                "only a head shows that was printed before: give it with --head.",
                ""
            })
    int verify(
            @Mixin StockAccess at,
            @Option(
                            names = "--head",
                            paramLabel = "HEAD",
                            converter = HeadText.class,
                            description = "As printed on a sheet, a backup or an export.")
                    @Nullable
                    Head head,
            @Mixin PageFiles files) {
        List<String> faults = new ArrayList<>(at.reading(Ledger::verify));
        if (faults.isEmpty() && head != null) {
            faults.addAll(at.reading(ledger -> ledger.read(stock -> Head.faults(head, stock))));
            Optional<Event> restore = faults.isEmpty() ? Optional.empty() : restoredFrom(at, head);
            if (restore.isPresent()) {
                return replaced(at, restore.get(), head);
            }
        }
        if (!faults.isEmpty()) {
            return faulty(at, faults, "the ledger is damaged: use a backup: bitterend stock restore SHOP FILE");
        }
        return at.reading(ledger -> ledger.read(stock -> sound(at, files, stock)));
    }

    private int faulty(StockAccess at, List<String> faults, String advice) {
        if (at.common.json) {
            terminal.out().print(StockJson.damaged(faults));
        }
        faults.forEach(fault -> terminal.err().println("error: " + Faults.printable(fault)));
        terminal.err().println(Faults.typed(advice, at.folder.toString()));
        return ExitCode.BAD_INPUT.number();
    }

    /** The restore by which the ledger of a head was replaced; that one is still kept and goes on from the head. */
    private static Optional<Event> restoredFrom(StockAccess at, Head head) {
        return at.reading(ledger -> ledger.read(stock -> stock.standing(Event.Kind.RESTORED))).stream()
                .filter(event -> !event.fact(Event.ASIDE).isEmpty())
                .filter(event -> LedgerRestore.isOf(aside(at, event), head))
                .findFirst();
    }

    private static Path aside(StockAccess at, Event restore) {
        Path name = Path.of(restore.fact(Event.ASIDE)).getFileName();
        return at.folder.resolve(name);
    }

    private int replaced(StockAccess at, Event restore, Head head) {
        String note = restore.act().note();
        String told = "that head is of the ledger that was replaced by event " + restore.number() + " ("
                + restore.act().kind().word() + ") on "
                + restore.at().atZone(ZoneOffset.UTC).toLocalDate() + " by "
                + restore.act().who() + (note.isEmpty() ? "" : ": " + note);
        return faulty(
                at,
                List.of(told),
                "the ledger of now is sound. It goes on from the backup that ended with "
                        + restore.fact(Event.FROM) + "; what was booked after that, up to event " + head.event()
                        + " and further, is in " + aside(at, restore));
    }

    private int sound(StockAccess at, PageFiles files, Ledger.Stock stock) {
        Balance balance = Balance.of(stock.events());
        return at.show(
                terminal,
                files,
                "Where the rope went",
                new Answer(() -> StockJson.balance(balance, stock.head()), () -> at.page()
                        .sound(balance, stock.head())));
    }

    /** Reads a printed head. */
    static final class HeadText implements picocli.CommandLine.ITypeConverter<Head> {
        @Override
        public Head convert(String text) {
            return Head.parse(text)
                    .orElseThrow(() -> new TypeConversionException(
                            "'" + text + "' is no head such as 3f2a9b7c1d2e.41.9c1e7d0a5b6c7d8e"));
        }
    }
}
