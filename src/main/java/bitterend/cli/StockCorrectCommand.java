package bitterend.cli;

import bitterend.exchange.Shop;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.LedgerException.Contradictory;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock correct SHOP REEL}: what was written down wrongly of a reel. */
@Command(
        name = "correct",
        header = "Corrects the lot, the papers or the note of a reel.",
        description = {
            "",
            "Only what is given changes. What stood there before stays in stock history, and",
            "pieces that were cut meanwhile are found under both lots. A length is corrected",
            "with stock count.",
            ""
        },
        sortOptions = false)
final class StockCorrectCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", paramLabel = "REEL")
    private String reel = "";

    @Option(
            names = "--rope",
            paramLabel = "ROPE",
            description = "Id of its rope in ropes.json, as long as nothing came off it.")
    private @Nullable String rope;

    @Option(names = "--lot", paramLabel = "LOT", converter = Typed.Lot.class, description = "Production run.")
    private @Nullable String lot;

    @Option(
            names = "--certificate",
            paramLabel = "KIND",
            converter = Typed.Words.class,
            description = "Kind of certificate.")
    private @Nullable String certificate;

    @Option(
            names = "--certificate-number",
            paramLabel = "NUMBER",
            converter = Typed.Words.class,
            description = "Its number.")
    private @Nullable String number;

    @Option(names = "--use-by", paramLabel = "DATE", converter = Typed.Day.class, description = "Last day to cut it.")
    private @Nullable LocalDate useBy;

    @Option(names = "--no-use-by", description = "It has no last day.")
    private boolean noUseBy;

    @Option(names = "--received", paramLabel = "DATE", converter = Typed.Day.class, description = "Day it came.")
    private @Nullable LocalDate received;

    @Option(
            names = "--reel-note",
            paramLabel = "TEXT",
            converter = Typed.Words.class,
            description = "What is to be known of the reel.")
    private @Nullable String reelNote;

    @Mixin
    private StockNote note = new StockNote();

    private final List<String> changes = new ArrayList<>();

    StockCorrectCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        boolean nothing = rope == null
                && lot == null
                && certificate == null
                && number == null
                && useBy == null
                && !noUseBy
                && received == null
                && reelNote == null;
        if (nothing || (noUseBy && useBy != null)) {
            throw new Contradictory(
                    "say what is to be corrected: --rope, --lot, --certificate, --certificate-number, --use-by or"
                            + " --no-use-by, --received, --reel-note");
        }
        if (rope != null && !isInTheCatalogue(rope)) {
            return ExitCode.BAD_INPUT.number();
        }
        if (lot != null) {
            String typed = lot;
            at.reading(ledger -> ledger.read(Ledger.Stock::holdings)).stream()
                    .filter(holding -> holding.id().equals(reel))
                    .forEach(holding ->
                            at.warnOfLookAlikeLot(terminal, holding.reel().rope(), typed));
        }
        UnaryOperator<Reel> correction = this::corrected;
        Event event = at.writing(ledger -> new Rack(ledger, note.caller(at))
                .correct(
                        reel,
                        correction,
                        () -> String.join("; ", changes) + (note.text.isEmpty() ? "" : ": " + note.text)));
        return at.booked(terminal, event.movements());
    }

    private boolean isInTheCatalogue(String id) {
        ShopArgument shop = new ShopArgument();
        shop.folder = at.folder;
        Optional<Shop> read = shop.readFiles(terminal);
        if (read.isPresent() && read.get().catalogue().findRope(id).isEmpty()) {
            throw new LedgerException.Refused("there is no rope " + id + " in ropes.json");
        }
        return read.isPresent();
    }

    private Reel corrected(Reel old) {
        Reel.Papers papers = old.papers();
        LocalDate lastDay = noUseBy ? LocalDate.MAX : useBy;
        return new Reel(
                        old.id(),
                        changed("rope", old.rope(), rope),
                        changed("lot", old.lot(), lot),
                        old.contents(),
                        old.flaws(),
                        new Reel.Papers(
                                changed("certificate", papers.certificate(), certificate),
                                changed("certificate number", papers.number(), number),
                                changed("use by", papers.useBy(), lastDay),
                                changed("received", papers.received(), received)),
                        old.custody(),
                        old.full(),
                        old.where())
                .withWhere(new Reel.Where(
                        old.where().place(),
                        old.where().mass(),
                        old.where().draw(),
                        changed("note", old.where().note(), reelNote)));
    }

    private <T> T changed(String name, T old, @Nullable T other) {
        if (other == null || other.equals(old)) {
            return old;
        }
        changes.add(name + " " + word(old) + " -> " + word(other));
        return other;
    }

    private static String word(Object value) {
        boolean none = value.equals(LocalDate.MAX) || value.equals(LocalDate.MIN) || value.equals("");
        return none ? "none" : value.toString();
    }
}
