package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.day.Trace;
import bitterend.exchange.StockJson;
import bitterend.report.page.Document;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
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

    @Option(names = "--lot", paramLabel = "LOT", description = "Every piece cut of this lot, and what is on the rack.")
    private @Nullable String lot;

    @Mixin
    private PageFiles files = new PageFiles();

    StockTraceCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if ((piece == null) == (lot == null)) {
            throw new LedgerException.Refused("trace a PIECE or a --lot");
        }
        return lot != null ? ofLot(lot) : ofPiece("" + piece);
    }

    private int ofLot(String name) {
        return at.reading(ledger -> ledger.read(stock -> {
            Trace trace = new Trace(stock);
            List<Movement> pieces = trace.ofLot(name);
            List<Holding> rack = trace.rackOf(name);
            if (pieces.isEmpty() && rack.isEmpty()) {
                throw new LedgerException.Refused("nothing was cut of lot " + name + ", and none of it is on the rack");
            }
            return at.show(
                    terminal, files, "Lot " + name, new Answer(() -> StockJson.lot(name, pieces, rack), () -> at.page()
                            .lot(pieces, rack)));
        }));
    }

    private int ofPiece(String name) {
        return at.reading(ledger -> ledger.read(stock -> {
            Trace trace = new Trace(stock);
            List<Movement> found = trace.ofPiece(name);
            if (found.isEmpty()) {
                throw new LedgerException.Refused("nothing was cut for piece " + name);
            }
            return at.show(
                    terminal,
                    files,
                    "Piece " + name,
                    new Answer(() -> StockJson.movements(found), () -> page(name, trace, stock)));
        }));
    }

    private Document page(String name, Trace trace, Ledger.Stock stock) {
        String reel = trace.reelOf(name);
        Reel now = stock.findHolding(reel).orElseThrow().reel();
        return at.page()
                .movements(trace.ofPiece(name))
                .with(at.page().events(trace.eventsOf(name), name))
                .with(changed(name))
                .with(at.page().cameOff(trace.ancestry(reel), now));
    }

    /** What its order says otherwise than when it was cut, where the shop can be read. */
    private Document changed(String id) {
        ShopArgument shop = new ShopArgument();
        shop.folder = at.folder;
        return shop.access()
                .read()
                .found()
                .map(now -> OrdersNow.about(now, id, at.units.figures(now.shop())))
                .orElse(Document.EMPTY);
    }
}
