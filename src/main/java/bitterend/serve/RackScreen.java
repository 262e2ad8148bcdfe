package bitterend.serve;

import bitterend.exchange.StockText;
import bitterend.report.Figures;
import bitterend.report.StockPage;
import bitterend.report.page.Document;
import bitterend.report.sheet.PagePart;
import bitterend.stock.Holding;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import bitterend.work.ShopNow;
import bitterend.work.rack.AskRack;
import bitterend.work.rack.AskRack.Found;
import bitterend.work.rack.RackDesk;
import bitterend.work.rack.RackWork;
import bitterend.work.rack.WorkReel;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is on the rack; a reel with its movements, and what may be done with it as a whole. */
final class RackScreen implements Screen {
    static final String PATH = "/rack/reel?id=";

    private final Loft loft;
    private final Site site;
    private final People people;

    RackScreen(Loft loft, Site site, People people) {
        this.loft = loft;
        this.site = site;
        this.people = people;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get("/rack", this::rack);
        config.routes.get("/rack/reel", this::reel);
        config.routes.post("/rack/reel", this::work);
    }

    private void rack(Context request) {
        ShopNow now = loft.now().orElse(null);
        if (now == null || !loft.access().keepsLedger()) {
            site.tell(request, "The shop keeps no ledger yet: bitterend stock open begins one.");
            return;
        }
        List<Holding> holdings = new AskRack(loft.access()).holdings(false);
        site.show(
                request,
                "Rack",
                "serve/rack.jte",
                Map.of(
                        "reels",
                        holdings.stream().map(each -> row(now, each.reel())).toList()));
    }

    private RackRow row(ShopNow now, Reel reel) {
        return new RackRow(
                reel.id(),
                reel.rope(),
                reel.lot(),
                loft.figures(now).written(reel.contents().written()),
                reel.where().place(),
                reel.custody().isOnHold()
                        ? "on hold"
                        : reel.custody().isReserved() ? "for " + reel.custody().order() : "",
                PATH + Sent.path(reel.id()));
    }

    private void reel(Context request) {
        ShopNow now = loft.now().orElseThrow(() -> new NotFoundResponse("There is no shop that can be read."));
        String id = Sent.asked(request, "id");
        if (!(new AskRack(loft.access()).history(id) instanceof Found.History history)) {
            throw new NotFoundResponse("There is no such reel.");
        }
        Figures figures = loft.figures(now);
        Document page = new StockPage(figures, ZoneId.systemDefault()).movements(history.movements());
        Map<String, Object> values = new HashMap<>();
        values.put("id", id);
        values.put(
                "row",
                holding(id).map(each -> row(now, each.reel())).orElse(new RackRow(id, "", "", "", "", "gone", "")));
        values.put("blocks", PagePart.blocks(page));
        values.put("booking", Keys.random());
        site.show(request, "Reel " + id, "serve/reel.jte", values);
    }

    private Optional<Holding> holding(String id) {
        return new AskRack(loft.access())
                .holdings(false).stream()
                        .filter(each -> each.reel().id().equals(id))
                        .findFirst();
    }

    private void work(Context request) {
        String who = people.who(request);
        String id = Sent.text(request, "reel");
        Optional<RackWork> work = asked(id, request);
        if (who.isEmpty() || work.isEmpty()) {
            site.tell(
                    request,
                    who.isEmpty()
                            ? People.FIRST
                            : "That could not be read: write a length such as 23.4 m, or a place.");
            return;
        }
        String booking = Sent.id(request);
        RackDesk desk =
                new RackDesk(loft.access(), act -> Sent.by(act, who, booking, request), Sent.text(request, "note"));
        Booking booked = new WorkReel(desk).book(work.get());
        if (booked instanceof Booking.Refused refused) {
            site.tell(request, Wrong.sentence(refused));
        } else {
            Back.to(request, PATH + Sent.path(id));
        }
    }

    private static Optional<RackWork> asked(String reel, Context request) {
        String value = Sent.text(request, "value");
        return switch (Sent.text(request, "what")) {
            case "hold" -> Optional.of(new RackWork.Hold(reel));
            case "release" -> Optional.of(new RackWork.Release(reel));
            case "rewind" -> Optional.of(new RackWork.Rewind(reel));
            case "move" -> value.isEmpty() ? Optional.empty() : Optional.of(new RackWork.Move(reel, value));
            case "reserve" -> StockText.order(value).value().map(order -> new RackWork.Reserve(reel, order));
            case "count" -> StockText.asTyped(value)
                    .value()
                    .map(length -> new RackWork.Count(reel, length, bitterend.measure.Length.ZERO, Reel.Known.COUNTED));
            default -> Optional.empty();
        };
    }
}
