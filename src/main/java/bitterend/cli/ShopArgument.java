package bitterend.cli;

import bitterend.day.RackToday;
import bitterend.exchange.LedgerReels;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFacts;
import bitterend.exchange.PlanFolder;
import bitterend.exchange.Shop;
import bitterend.exchange.ShopFolder;
import bitterend.exchange.ShopReading;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.finding.Severity;
import bitterend.report.FindingsPage;
import bitterend.stock.Ledger;
import bitterend.store.SqliteLedger;
import bitterend.work.FolderLog;
import bitterend.work.LedgerLog;
import bitterend.work.PlanLog;
import bitterend.work.Plans;
import bitterend.work.ShopToday;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Parameters;

/** The shop folder that nearly every command begins with. */
final class ShopArgument {
    @Parameters(index = "0", paramLabel = "SHOP", description = "The shop folder, such as demo-data/eider-shed.")
    Path folder = Path.of("");

    private @Nullable RackToday rack;
    private PlanFacts.LedgerMark mark = PlanFacts.LedgerMark.NONE;

    /** What is in the folder; the reels are those of the ledger where the shop keeps one. */
    ShopReading read() {
        return rack().map(today ->
                        ShopFolder.read(folder, new LedgerReels(SqliteLedger.NAME, today.reels(), today.gone())))
                .orElseGet(() -> ShopFolder.read(folder));
    }

    /** What the ledger says, where the shop keeps one; read once. */
    Optional<RackToday> rack() {
        if (rack == null && SqliteLedger.isKeptIn(folder)) {
            try (Ledger ledger = SqliteLedger.openToRead(folder)) {
                rack = RackToday.of(ledger);
                mark = ShopToday.Rack.mark(ledger);
            }
        }
        return Optional.ofNullable(rack);
    }

    /** The plans of the shop. */
    Plans plans(Findings findings) {
        return plans(folder, findings);
    }

    static Plans plans(Path folder, Findings findings) {
        PlanLog files = new FolderLog(folder, findings);
        PlanLog log = SqliteLedger.isKeptIn(folder)
                ? new LedgerLog(
                        () -> SqliteLedger.openToRead(folder),
                        () -> SqliteLedger.open(folder, Clock.systemUTC()),
                        files)
                : files;
        return new Plans(new PlanFolder(folder), log);
    }

    /** The shop as it is now, to hold this plan against. */
    ShopToday today(Shop shop, PlanDocument plan) {
        if (!SqliteLedger.isKeptIn(folder)) {
            return new ShopToday(shop, Optional.empty());
        }
        try (Ledger ledger = SqliteLedger.openToRead(folder)) {
            return new ShopToday(shop, Optional.of(ShopToday.Rack.of(ledger, plan.plan())));
        }
    }

    /** Which ledger the shop keeps, and how far it has got. */
    PlanFacts.LedgerMark mark() {
        rack();
        return mark;
    }

    /** The shop, when it has no errors. Its errors go to the error stream; of mere warnings it is told where they stand. */
    Optional<Shop> readOrComplain(Terminal terminal) {
        return complain(terminal, read());
    }

    /** The shop with the reels of {@code reels.csv}, whether it keeps a ledger or not. */
    Optional<Shop> readFiles(Terminal terminal) {
        return complain(terminal, ShopFolder.read(folder));
    }

    private Optional<Shop> complain(Terminal terminal, ShopReading reading) {
        String summary = FindingsPage.summary(reading.findings());
        if (reading.shop().isEmpty()) {
            List<Finding> errors = reading.findings().stream()
                    .filter(finding -> finding.severity() != Severity.WARNING)
                    .toList();
            terminal.err().print(FindingsPage.text(errors, terminal.ink()));
            terminal.err().println(summary + ": nothing was planned or written.");
        } else if (!reading.findings().isEmpty()) {
            terminal.err()
                    .print(FindingsPage.text(reading.shop().map(Shop::leftOut).orElse(List.of()), terminal.ink()));
            terminal.err().println(summary + "; to read all of them: bitterend check " + folder);
        }
        return reading.shop();
    }
}
