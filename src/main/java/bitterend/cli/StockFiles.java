package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.ReelsExport;
import bitterend.exchange.Shop;
import bitterend.exchange.StockJson;
import bitterend.measure.Moments;
import bitterend.report.FindingsPage;
import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.Holding;
import bitterend.stock.LedgerPlace;
import bitterend.work.PlanAfterwards;
import bitterend.work.ShopNow;
import bitterend.work.rack.BeginLedger;
import bitterend.work.rack.LookAfterLedger;
import bitterend.work.rack.LookAfterLedger.Verified;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** {@code stock ...}: the ledger as a file. Each method is a command, and a command of what extends it. */
@Command(addMethodSubcommands = false)
abstract class StockFiles {
    private final Terminal terminal;

    StockFiles(Terminal terminal) {
        this.terminal = terminal;
    }

    @Command(name = "open", header = "Begins the ledger with the reels of reels.csv.")
    int open(@Mixin StockAccess at) {
        Optional<Shop> read = at.shop().readFiles(terminal).map(ShopNow::shop);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Head head = new BeginLedger(at.access()).begin(read.get(), at.who());
        String file = at.access().ledgerText();
        String told = file + " holds " + read.get().reels().size() + " reels now; reels.csv is no longer read.\n";
        terminal.out().print(at.common.json ? StockJson.ledger(file, head, "") : told);
        new PlanAfterwards(at.access()).opened().forEach(line -> at.tell(terminal, line));
        return ExitCode.DONE.number();
    }

    @Command(name = "export", header = "Prints the rack in the form of reels.csv.")
    int export(@Mixin StockAccess at) {
        LookAfterLedger.Rack rack = verb(at).rack();
        ReelsExport table = ReelsExport.of(rack.holdings().stream()
                .filter(holding -> !holding.gone())
                .map(Holding::reel)
                .toList());
        terminal.out().print(at.common.json ? StockJson.rack(rack.holdings()) : table.csv());
        terminal.err().println("head of the ledger: " + rack.head().text());
        if (at.common.json || table.leftOut().isEmpty()) {
            return ExitCode.DONE.number();
        }
        terminal.err().print(FindingsPage.text(table.leftOut(), terminal.ink()));
        return ExitCode.NOT_ALL_PLANNED.number();
    }

    private static LookAfterLedger verb(StockAccess at) {
        return new LookAfterLedger(at.access());
    }

    @Command(name = "backup", header = "Copies the ledger into a new file, while others work.")
    int backup(@Mixin StockAccess at, @Parameters(index = "1", paramLabel = "FILE") Path file) {
        Head head = verb(at).backup(file);
        terminal.out()
                .print(
                        at.common.json
                                ? StockJson.ledger(file.toString(), head, "")
                                : "copied the ledger as it is now to " + file + "\n" + told(head));
        return ExitCode.DONE.number();
    }

    @Command(
            name = "restore",
            header = "Puts a backup in the place of the ledger.",
            description = {
                "",
                "The backup is looked through first. The ledger that is there is kept next to it",
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
        LedgerPlace.Restored restored =
                verb(at).restore(file, other ? LedgerPlace.Whose.ANY : LedgerPlace.Whose.ITS_OWN, act);
        String aside = restored.aside().map(Path::toString).orElse("");
        String told = "the ledger is that of " + file + " now\n"
                + (aside.isEmpty() ? "" : "the one that was there is kept as " + aside + "\n")
                + told(restored.head());
        terminal.out()
                .print(at.common.json ? StockJson.ledger(at.access().ledgerText(), restored.head(), aside) : told);
        return ExitCode.DONE.number();
    }

    @Command(
            name = "move-ledger",
            header = "Carries the ledger to the server of shop.json, or back.",
            description = {
                "",
                "Identity, events and chain stay as they are; nobody books meanwhile. The file",
                "that was carried to a server is kept as stock.db-moved-...; a loft that was",
                "carried back is no longer used.",
                ""
            })
    int moveLedger(
            @Mixin StockAccess at,
            @Option(names = "--to-file", description = "From the server into stock.db of the shop folder.")
                    boolean toFile) {
        LedgerPlace.Carried carried = verb(at).carry(toFile ? LedgerPlace.Where.FILE : LedgerPlace.Where.SERVER);
        String aside = carried.aside().map(Path::toString).orElse("");
        String told = "the ledger is " + carried.now() + " now\n"
                + (aside.isEmpty() ? "" : "the file that it was is kept as " + aside + "\n")
                + (toFile ? "take \"ledger\" out of shop.json: until then nothing is booked\n" : "")
                + told(carried.head());
        terminal.out().print(at.common.json ? StockJson.ledger(carried.now(), carried.head(), aside) : told);
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
        Verified verified = verb(at).verify(head);
        if (verified instanceof Verified.Damaged damaged) {
            return faulty(
                    at, damaged.faults(), "the ledger is damaged: use a backup; how: bitterend stock restore --help");
        }
        return verified instanceof Verified.Replaced replaced && head != null
                ? replaced(at, replaced, head)
                : sound(at, files, (Verified.Sound) verified);
    }

    private int faulty(StockAccess at, List<String> faults, String advice) {
        if (at.common.json) {
            terminal.out().print(StockJson.damaged(faults));
        }
        faults.forEach(fault -> terminal.err().println("error: " + Faults.printable(fault)));
        terminal.err().println(advice);
        return ExitCode.BAD_INPUT.number();
    }

    private int replaced(StockAccess at, Verified.Replaced replaced, Head head) {
        Event restore = replaced.restore();
        String note = restore.act().note();
        String told = "that head is of the ledger that was replaced by event " + restore.number() + " ("
                + restore.act().kind().word() + ") on "
                + Moments.day(restore.at()) + " by "
                + restore.act().who() + (note.isEmpty() ? "" : ": " + note);
        return faulty(
                at,
                List.of(told),
                "the ledger of now is sound. It goes on from the backup that ended with "
                        + restore.fact(Event.FROM) + "; what was booked after that, up to event " + head.event()
                        + " and further, is in " + replaced.aside());
    }

    private int sound(StockAccess at, PageFiles files, Verified.Sound sound) {
        return at.show(
                terminal,
                files,
                "Where the rope went",
                new Answer(() -> StockJson.balance(sound.balance(), sound.head(), sound.onTheWay()), () -> at.page()
                        .sound(sound.balance(), sound.head(), sound.onTheWay())));
    }

    /** Reads a printed head. */
    static final class HeadText implements picocli.CommandLine.ITypeConverter<Head> {
        @Override
        public Head convert(String text) {
            return Head.parse(text)
                    .orElseThrow(() ->
                            new TypeConversionException("expected a head such as 3f2a9b7c1d2e.41.9c1e7d0a5b6c7d8e"));
        }
    }
}
