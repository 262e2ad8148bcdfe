package bitterend.work;

import bitterend.day.RackToday;
import bitterend.exchange.LedgerReels;
import bitterend.exchange.PlanFacts.LedgerMark;
import bitterend.exchange.PlanFolder;
import bitterend.exchange.Settings;
import bitterend.exchange.Shop;
import bitterend.exchange.ShopFolder;
import bitterend.exchange.ShopReading;
import bitterend.finding.Findings;
import bitterend.packing.CutPlan;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerPlace;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Function;

/**
 * The way to a shop: its folder, the ledger that it may keep, and the time. It keeps nothing of what it reads, so that many
 * may go this way at once.
 *
 * @param folder the shop folder
 * @param ledger where its ledger is kept
 * @param clock the time of what is written down
 * @param named the shop in a command that a sentence names
 */
public record ShopAccess(Path folder, LedgerPlace ledger, Clock clock, String named) {
    /** A shop that commands name by its folder. */
    public ShopAccess(Path folder, LedgerPlace ledger, Clock clock) {
        this(folder, ledger, clock, folder.toString());
    }

    /** The same where nobody who reads a sentence needs to know where the folder is. */
    public ShopAccess named(String word) {
        return new ShopAccess(folder, ledger, clock, word);
    }

    /**
     * What reading a shop gave.
     *
     * @param reading every finding, and the shop when none of them is an error
     * @param rack what its ledger says, where it keeps one
     * @param mark which ledger that is, and how far it had got
     */
    private record Read(ShopReading reading, Optional<RackToday> rack, LedgerMark mark) {}

    /** The shop as it is at this moment; its reels are those of the ledger where it keeps one. */
    public ShopFound read() {
        Read read = ledger.isKept() ? reading(this::ofLedger) : new Read(files(), Optional.empty(), LedgerMark.NONE);
        return new ShopFound(
                read.reading().findings(),
                read.reading()
                        .shop()
                        .map(shop -> new ShopNow(this, shop, read.rack(), read.mark()))
                        .orElse(null));
    }

    private Read ofLedger(Ledger opened) {
        RackToday rack = RackToday.of(opened);
        return new Read(
                ShopFolder.read(
                        folder,
                        new LedgerReels(ledger.name(), rack.reels(), rack.gone(), rack.came(), rack.deliveries())),
                Optional.of(rack),
                ShopToday.Rack.mark(opened));
    }

    /** The shop with the reels of {@code reels.csv}, whether it keeps a ledger or not. */
    public ShopFound readFiles() {
        ShopReading reading = files();
        return new ShopFound(
                reading.findings(),
                reading.shop()
                        .map(shop -> new ShopNow(this, shop, Optional.empty(), LedgerMark.NONE))
                        .orElse(null));
    }

    private ShopReading files() {
        return ShopFolder.read(folder);
    }

    /** The plans of the shop; what cannot be read of their log is told to the findings. */
    public Plans plans(Findings findings) {
        PlanLog files = new FolderLog(folder, findings);
        return new Plans(
                new PlanFolder(folder),
                ledger.isKept() ? new LedgerLog(ledger::toRead, ledger::toWrite, files) : files);
    }

    /** The shop as it is at this moment, to hold a plan against. */
    ShopToday today(Shop shop, CutPlan plan) {
        return new ShopToday(
                shop,
                ledger.isKept() ? Optional.of(reading(opened -> ShopToday.Rack.of(opened, plan))) : Optional.empty());
    }

    /** Whether the shop keeps a ledger. */
    public boolean keepsLedger() {
        return ledger.isKept();
    }

    /** Which ledger the shop keeps, and how far it has got at this moment. */
    public LedgerMark mark() {
        return ledger.isKept() ? reading(ShopToday.Rack::mark) : LedgerMark.NONE;
    }

    /** Name of the file that holds the ledger, or would. */
    public String ledgerName() {
        return ledger.name();
    }

    /** Where the ledger of the shop is, or would be, for people. */
    public String ledgerText() {
        return ledger.text();
    }

    /** What tells one state of the ledger from another, where the files of the folder do not. */
    public String ledgerState() {
        return ledger.isInTheFolder() || !ledger.isKept() ? "" : mark().toString();
    }

    /** Asks the ledger something. */
    public <T> T reading(Function<Ledger, T> question) {
        try (Ledger opened = ledger.toRead()) {
            return question.apply(opened);
        }
    }

    /** Does something with the ledger that may book. */
    public <T> T writing(Function<Ledger, T> deed) {
        try (Ledger opened = ledger.toWrite()) {
            return deed.apply(opened);
        }
    }

    /** What the settings of the shop say, where they can be read. */
    public Optional<Settings> settings() {
        return ShopFolder.settings(folder);
    }
}
