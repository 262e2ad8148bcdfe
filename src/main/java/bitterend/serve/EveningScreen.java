package bitterend.serve;

import bitterend.day.OrderStatus;
import bitterend.day.PieceStatus;
import bitterend.day.PieceStatus.State;
import bitterend.finding.Findings;
import bitterend.report.FindingsPage;
import bitterend.work.Plans;
import bitterend.work.SheetsOut;
import bitterend.work.ShopNow;
import bitterend.work.ShopToday;
import bitterend.work.orders.AskOrders;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What is still open when the day ends, each with where it is dealt with; nothing is booked by looking. */
final class EveningScreen implements Screen {
    static final String PATH = "/evening";

    private final Loft loft;
    private final Site site;

    EveningScreen(Loft loft, Site site) {
        this.loft = loft;
        this.site = site;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(PATH, request -> loft.whenRead(request, site, now -> show(request, now)));
    }

    private void show(Context request, ShopNow now) {
        LocalDate day = Loft.day(now);
        List<PieceStatus> pieces = new AskOrders(now, day)
                .status().orders().stream()
                        .map(OrderStatus::pieces)
                        .flatMap(List::stream)
                        .toList();
        List<StillOpen> open = List.of(
                new StillOpen("Still to be cut today", "All that the plan cuts today is cut.", toCut(pieces, day)),
                new StillOpen(
                        "Late or in no plan, to be cut by today",
                        "Every piece that must be cut by today is cut or planned for today.",
                        late(pieces, day)),
                new StillOpen("Sheets on the bench", "No sheet with pieces to cut is out.", out(now)),
                new StillOpen("Cut, waiting for their ends", "No cut piece waits for its ends.", waiting(pieces)));
        site.show(request, "The evening", "serve/evening.jte", Map.of("open", open));
    }

    private static List<Way> toCut(List<PieceStatus> pieces, LocalDate day) {
        Map<String, Integer> reels = new TreeMap<>();
        pieces.stream()
                .filter(piece -> piece.is(State.PLANNED) && !piece.place().on().isAfter(day))
                .forEach(piece -> reels.merge(piece.place().reel(), 1, Integer::sum));
        List<Way> ways = new ArrayList<>();
        reels.forEach((reel, count) -> ways.add(new Way(
                BenchScreen.PATH + Sent.path(reel), "reel " + reel + ": " + FindingsPage.count(count, "piece"))));
        return ways;
    }

    private static List<Way> late(List<PieceStatus> pieces, LocalDate day) {
        return byLine(
                pieces.stream()
                        .filter(piece -> piece.isToBeCut()
                                && !piece.cutBy().isAfter(day)
                                && !(piece.is(State.PLANNED)
                                        && !piece.place().on().isAfter(day)))
                        .toList(),
                "/reasons");
    }

    private static List<Way> waiting(List<PieceStatus> pieces) {
        return byLine(pieces.stream().filter(piece -> piece.is(State.CUT)).toList(), "/splicing");
    }

    private static List<Way> byLine(List<PieceStatus> pieces, String path) {
        Map<String, Integer> lines = new TreeMap<>();
        pieces.forEach(piece -> lines.merge(piece.line(), 1, Integer::sum));
        List<Way> ways = new ArrayList<>();
        lines.forEach((line, count) -> ways.add(new Way(path, line + ": " + FindingsPage.count(count, "piece"))));
        return ways;
    }

    private static List<Way> out(ShopNow now) {
        if (now.rack().isEmpty()) {
            return List.of();
        }
        Plans plans = now.at().plans(new Findings());
        SheetsOut out = new SheetsOut(plans, now.at().reading(ShopToday.Rack::of), now.stillOpen());
        return out.plans().stream()
                .flatMap(plan -> out.reels(plan).stream()
                        .map(reel -> new Way(
                                "/bench",
                                "reel " + reel + ", plan " + plan.document().number())))
                .toList();
    }
}
