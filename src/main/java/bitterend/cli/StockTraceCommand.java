package bitterend.cli;

import bitterend.day.Trace;
import bitterend.report.StockPage;
import bitterend.stock.Event;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock trace}: a piece to its reel, lot, certificate and plan; a lot to every piece. */
@Command(name = "trace", header = "Traces a piece to its reel and lot, or a lot to every piece.", sortOptions = false)
final class StockTraceCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", arity = "0..1", paramLabel = "PIECE", description = "Such as 1041/3.2.")
    private @Nullable String piece;

    @Option(names = "--lot", paramLabel = "LOT", description = "Every piece that is cut of this lot.")
    private @Nullable String lot;

    StockTraceCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if ((piece == null) == (lot == null)) {
            throw new LedgerException.Refused("trace a PIECE or a --lot");
        }
        List<Movement> found = at.reading(ledger ->
                ledger.read(stock -> lot != null ? new Trace(stock).ofLot(lot) : new Trace(stock).ofPiece("" + piece)));
        if (found.isEmpty()) {
            throw new LedgerException.Refused(
                    "nothing was cut " + (lot == null ? "for piece " + piece : "of lot " + lot));
        }
        int code = at.booked(terminal, found);
        StockPage page = at.page();
        if (lot == null) {
            Reel reel = found.get(found.size() - 1).entry().after();
            List<String> line = at.reading(ledger -> ledger.read(stock -> new Trace(stock).ancestry(reel.id())));
            List<Event> events = at.reading(ledger -> ledger.read(stock -> new Trace(stock).eventsOf("" + piece)));
            at.say(terminal, page.events(events, "" + piece));
            at.say(terminal, changed("" + piece));
            at.say(terminal, "off " + String.join(", which came off ", line) + ":\n" + page.label(reel));
        }
        return code;
    }

    /** What its order says otherwise than when it was cut, where the shop can be read. */
    private String changed(String id) {
        ShopArgument shop = new ShopArgument();
        shop.folder = at.folder;
        return shop.read()
                .shop()
                .map(read -> OrdersNow.about(shop, read, id, at.units.figures(read)))
                .orElse("");
    }
}
