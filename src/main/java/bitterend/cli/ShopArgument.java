package bitterend.cli;

import bitterend.exchange.Shop;
import bitterend.finding.CommandWord;
import bitterend.finding.Finding;
import bitterend.finding.Severity;
import bitterend.report.FindingsPage;
import bitterend.stock.LedgerPlace;
import bitterend.store.ServedLedgerPlace;
import bitterend.store.SqliteLedgerPlace;
import bitterend.work.ShopAccess;
import bitterend.work.ShopFound;
import bitterend.work.ShopLedgerPlace;
import bitterend.work.ShopNow;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Parameters;

/** The shop folder that nearly every command begins with. */
final class ShopArgument {
    @Parameters(index = "0", paramLabel = "SHOP", description = "The shop folder, such as demo-data/eider-shed.")
    Path folder = Path.of("");

    /** A shop whose folder was named elsewhere on the command line. */
    static ShopArgument in(Path folder) {
        ShopArgument shop = new ShopArgument();
        shop.folder = folder;
        return shop;
    }

    /** The way to the shop. */
    ShopAccess access() {
        return access(folder);
    }

    static ShopAccess access(Path folder) {
        Clock clock = Clock.systemUTC();
        LedgerPlace place = new ShopLedgerPlace(
                folder, new SqliteLedgerPlace(folder, clock), loft -> new ServedLedgerPlace(loft, folder, clock));
        return new ShopAccess(folder, place, clock);
    }

    /** The shop, when it has no errors. Its errors go to the error stream; of mere warnings it is told where they stand. */
    Optional<ShopNow> readOrComplain(Terminal terminal) {
        return complain(terminal, access().read());
    }

    /** The shop with the reels of {@code reels.csv}, whether it keeps a ledger or not. */
    Optional<ShopNow> readFiles(Terminal terminal) {
        return complain(terminal, access().readFiles());
    }

    private Optional<ShopNow> complain(Terminal terminal, ShopFound read) {
        String summary = FindingsPage.summary(read.findings());
        if (read.found().isEmpty()) {
            List<Finding> errors = read.findings().stream()
                    .filter(finding -> finding.severity() != Severity.WARNING)
                    .toList();
            terminal.err().print(FindingsPage.text(errors, terminal.ink()));
            terminal.err().println(summary + ": nothing was planned or written.");
        } else if (!read.findings().isEmpty()) {
            terminal.err()
                    .print(FindingsPage.text(
                            read.found().map(ShopNow::shop).map(Shop::leftOut).orElse(List.of()), terminal.ink()));
            terminal.err()
                    .println(summary + "; to read all of them: bitterend check " + CommandWord.of(folder.toString()));
        }
        return read.found();
    }
}
