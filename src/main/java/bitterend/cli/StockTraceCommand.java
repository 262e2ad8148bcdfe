package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.StockJson;
import bitterend.front.OrdersNow;
import bitterend.report.page.Document;
import bitterend.stock.LedgerException;
import bitterend.work.rack.AskRack;
import bitterend.work.rack.AskRack.Found;
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
        Found.OfLot lot = (Found.OfLot) there(new AskRack(at.access()).lot(name));
        return at.show(
                terminal,
                files,
                "Lot " + name,
                new Answer(() -> StockJson.lot(name, lot.pieces(), lot.rack()), () -> at.page()
                        .lot(lot.pieces(), lot.rack())));
    }

    private int ofPiece(String name) {
        Found.OfPiece piece = (Found.OfPiece) there(new AskRack(at.access()).piece(name));
        return at.show(
                terminal,
                files,
                "Piece " + name,
                new Answer(() -> StockJson.movements(piece.movements()), () -> page(name, piece)));
    }

    /** What was found; that nothing was goes to {@link Faults}. */
    static Found there(Found found) {
        if (found instanceof Found.Nothing nothing) {
            throw Faults.of(nothing.why());
        }
        return found;
    }

    private Document page(String name, Found.OfPiece piece) {
        return at.page()
                .movements(piece.movements())
                .with(at.page().events(piece.events(), name))
                .with(changed(name))
                .with(at.page().cameOff(piece.ancestry(), piece.reel()));
    }

    /** What its order says otherwise than when it was cut, where the shop can be read. */
    private Document changed(String id) {
        return at.access()
                .read()
                .found()
                .map(now -> OrdersNow.about(now, id, at.units.figures(now.shop())))
                .orElse(Document.EMPTY);
    }
}
