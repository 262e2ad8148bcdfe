package bitterend.cli;

import bitterend.exchange.FlawText;
import bitterend.measure.Parsed;
import bitterend.stock.Event;
import bitterend.stock.Flaw;
import bitterend.stock.LedgerException;
import bitterend.stock.Rack;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code stock flaw}: a flaw was found on a reel. */
@Command(
        name = "flaw",
        header = "Books a flaw that was found on a reel.",
        description = {"", "Such as: stock flaw SHOP R-104 \"20 m to 21 m +/- 0.1 m: chafed\"", ""},
        sortOptions = false)
final class StockFlawCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", paramLabel = "REEL")
    private String reel = "";

    @Parameters(index = "2", paramLabel = "FLAW", description = "From the working end, as in reels.csv.")
    private String flaw = "";

    @Mixin
    private StockNote note = new StockNote();

    StockFlawCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Parsed<List<Flaw>> flaws = FlawText.parse(flaw);
        if (flaws.refusal().isPresent()) {
            throw new LedgerException.Refused(
                    "'" + flaw + "': expected " + flaws.refusal().get());
        }
        List<Flaw> found = flaws.value().orElseThrow();
        Event event = at.writing(ledger -> new Rack(ledger, note.caller(at)).addFlaws(reel, found, note.text));
        return at.booked(terminal, event.movements());
    }
}
