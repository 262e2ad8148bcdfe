package bitterend.serve;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.work.ShopNow;
import bitterend.work.rack.AskRack;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;

/** One box that finds an order, a piece, a reel, a lot or a plan by what is typed of it. */
final class FindScreen implements Screen {
    private static final int MOST = 50;

    private final Loft loft;
    private final Site site;

    FindScreen(Loft loft, Site site) {
        this.loft = loft;
        this.site = site;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get("/find", this::find);
    }

    private void find(Context request) {
        String asked = Sent.asked(request, "what");
        List<Hit> hits = asked.isEmpty()
                ? List.of()
                : loft.now().map(now -> hits(now, asked)).orElse(List.of());
        site.show(request, "Look up", "serve/find.jte", Map.of("asked", asked, "hits", hits));
    }

    private List<Hit> hits(ShopNow now, String asked) {
        String small = asked.toLowerCase(Locale.ROOT);
        List<Hit> hits = new ArrayList<>();
        if (loft.access().keepsLedger()) {
            new AskRack(loft.access()).holdings(true).forEach(holding -> {
                String id = holding.reel().id();
                boolean lot = holding.reel().lot().toLowerCase(Locale.ROOT).contains(small);
                if (id.toLowerCase(Locale.ROOT).contains(small) || lot) {
                    hits.add(new Hit(
                            lot ? "reel of lot " + holding.reel().lot() : "reel", id, RackScreen.PATH + Sent.path(id)));
                }
            });
        }
        TreeSet<String> orders = new TreeSet<>(NaturalOrder.IDS);
        now.shop().pieces().stream()
                .filter(piece -> piece.id().toLowerCase(Locale.ROOT).contains(small))
                .map(Piece::order)
                .forEach(orders::add);
        orders.forEach(order -> hits.add(new Hit("order", order, "/orders")));
        return hits.stream().limit(MOST).toList();
    }
}
