package bitterend.serve;

import bitterend.finding.Findings;
import bitterend.front.OrdersNow;
import bitterend.report.Figures;
import bitterend.report.StockPage;
import bitterend.report.page.Block;
import bitterend.report.page.Document;
import bitterend.report.page.Writing;
import bitterend.work.ShopNow;
import bitterend.work.plans.PlanOfPiece;
import bitterend.work.rack.AskRack;
import bitterend.work.rack.AskRack.Found;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Where a piece came from, and what became of a lot: the pages of the command, for a recall. */
final class TraceScreen implements Screen {
    /** Where a piece is traced. */
    static final String PIECE = "/rack/trace?what=";

    /** Where a lot is traced. */
    static final String LOT = "/rack/trace?lot=";

    private final Loft loft;
    private final Site site;

    TraceScreen(Loft loft, Site site) {
        this.loft = loft;
        this.site = site;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get("/rack/trace", request -> loft.whenKept(request, site, now -> trace(request, now)));
    }

    private void trace(Context request, ShopNow now) {
        String lot = Sent.asked(request, "lot");
        String what = lot.isEmpty() ? Sent.asked(request, "what") : lot;
        Optional<Document> page =
                (lot.isEmpty() ? piece(now, what) : Optional.<Document>empty()).or(() -> lot(now, what));
        if (page.isPresent()) {
            site.show(request, page.get());
        } else {
            request.status(404);
            site.tell(
                    request,
                    "Nothing was cut for a piece of that name, nothing was cut of a lot of that name, and none of it is on the"
                            + " rack.");
        }
    }

    private StockPage page(ShopNow now) {
        return new StockPage(loft.figures(now), ZoneId.systemDefault());
    }

    private Optional<Document> lot(ShopNow now, String name) {
        return new AskRack(loft.access()).lot(name) instanceof Found.OfLot lot
                ? Optional.of(page(now).lot(lot.pieces(), lot.rack()).titled("Stock", "Lot " + name, shop(now)))
                : Optional.empty();
    }

    private Optional<Document> piece(ShopNow now, String name) {
        if (!(new AskRack(loft.access()).piece(name) instanceof Found.OfPiece piece)) {
            return Optional.empty();
        }
        Figures figures = loft.figures(now);
        Writing ways = new Writing();
        if (PlanOfPiece.of(now, now.at().plans(new Findings()), name).isPresent()) {
            ways.links(List.of(new Block.Link("Reprint its tag", PrintScreen.TAG + Sent.path(name))));
        }
        return Optional.of(page(now)
                .movements(piece.movements())
                .with(page(now).events(piece.events(), name))
                .with(OrdersNow.about(now, name, figures))
                .with(page(now).cameOff(piece.ancestry(), piece.reel()))
                .with(ways.document())
                .titled("Stock", "Piece " + name, shop(now)));
    }

    private static String shop(ShopNow now) {
        return now.shop().settings().name();
    }
}
