package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.Settings;
import bitterend.exchange.ShopFolder;
import bitterend.exchange.StockJson;
import bitterend.finding.LookAlike;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.report.Figures;
import bitterend.report.StockPage;
import bitterend.report.page.Document;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.store.SqliteLedger;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The shop whose ledger is used, and who uses it. */
final class StockAccess {
    @Parameters(index = "0", paramLabel = "SHOP", description = "The shop folder.")
    Path folder = Path.of("");

    @Option(
            names = "--who",
            paramLabel = "NAME",
            converter = Typed.Words.class,
            description = "Who books this. Default: the name you are logged in as.")
    @Nullable
    String who;

    @Mixin
    UnitsOption units = new UnitsOption();

    @Mixin
    CommonOptions common = new CommonOptions();

    <T> T reading(Function<Ledger, T> work) {
        try (Ledger ledger = SqliteLedger.openToRead(folder)) {
            return work.apply(ledger);
        }
    }

    <T> T writing(Function<Ledger, T> work) {
        try (Ledger ledger = SqliteLedger.open(folder, clock())) {
            return work.apply(ledger);
        }
    }

    Clock clock() {
        return Clock.systemUTC();
    }

    String who() {
        return who == null || who.isBlank() ? System.getProperty("user.name", "unknown") : who.strip();
    }

    /** Pages in the units of the shop where its settings can be read, else metric. */
    StockPage page() {
        Units system = units.of(ShopFolder.settings(folder).map(Settings::units).orElse(Units.METRIC));
        return new StockPage(new Figures(system, MoneyText.NO_CURRENCY), ZoneId.systemDefault());
    }

    /** Warns of a new id that looks like one that is there. */
    void warnOfLookAlikes(Terminal terminal, String id) {
        LookAlike met = new LookAlike();
        reading(ledger -> ledger.read(Ledger.Stock::holdings)).forEach(holding -> met.before(holding.id()));
        String other = met.before(id);
        if (!other.isEmpty()) {
            terminal.err().println("warning: '" + id + "' looks like '" + other + "', which is another reel");
        }
    }

    /** Warns of a lot that looks like another lot of the same rope: a matched set would take them for two. */
    void warnOfLookAlikeLot(Terminal terminal, String rope, String lot) {
        LookAlike met = new LookAlike();
        reading(ledger -> ledger.read(Ledger.Stock::holdings)).stream()
                .map(Holding::reel)
                .filter(reel -> reel.rope().equals(rope))
                .forEach(reel -> met.before(reel.lot()));
        String other = met.before(lot);
        if (!other.isEmpty()) {
            terminal.err()
                    .println("warning: lot '" + lot + "' looks like '" + other + "', which is another lot of " + rope);
        }
    }

    /** Prints movements as they were booked. */
    int booked(Terminal terminal, List<Movement> movements) {
        terminal.out()
                .print(common.json ? StockJson.movements(movements) : text(terminal, page().movements(movements)));
        return ExitCode.DONE.number();
    }

    /** A page of stock as text. */
    static String text(Terminal terminal, Document page) {
        return page.text(terminal.ink(), StockPage.WIDTH);
    }

    /** As {@link PageFiles#show}, for a page of stock: wider as text, and under a title where it is set on paper. */
    int show(Terminal terminal, PageFiles files, String title, Answer answer) {
        Document page = files.page(common.json, answer);
        terminal.out().print(common.json ? answer.json().get() : text(terminal, page));
        terminal.out().flush();
        String shop = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
        files.write(terminal, page.titled("Stock", title, shop));
        return ExitCode.DONE.number();
    }

    /** Says something beside the result, unless the result is for a program. */
    void say(Terminal terminal, String text) {
        (common.json ? terminal.err() : terminal.out()).print(text);
    }
}
