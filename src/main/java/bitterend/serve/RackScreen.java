package bitterend.serve;

import bitterend.report.Figures;
import bitterend.report.StockPage;
import bitterend.stock.Holding;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import bitterend.work.ShopNow;
import bitterend.work.rack.AskRack;
import bitterend.work.rack.ReelWorth;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;

/** What is on the rack, and what comes onto it. */
final class RackScreen implements Screen {
    static final String PATH = "/rack/reel?id=";

    /** What is said of a shop without a ledger. */
    static final String NO_LEDGER = "The shop keeps no ledger yet: begin it on the screen of today.";

    private final Loft loft;
    private final Site site;
    private final People people;
    private final Office office;

    RackScreen(Loft loft, Site site, People people, Office office) {
        this.office = office;
        this.loft = loft;
        this.site = site;
        this.people = people;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get("/rack", request -> loft.whenKept(request, site, now -> rack(request, now)));
        config.routes.get(ReelForms.RECEIVE, request -> loft.whenKept(request, site, now -> coming(request, now)));
        config.routes.post(
                ReelForms.RECEIVE,
                request -> loft.whenKnown(request, site, people, (now, who) -> receive(request, now, who)));
    }

    private void rack(Context request, ShopNow now) {
        Figures figures = loft.figures(now);
        StockPage page = new StockPage(figures, ZoneId.systemDefault());
        boolean open = office.isOpen(request);
        ReelWorth worth = new ReelWorth(now, Loft.day(now));
        List<RackRow> rows = new AskRack(loft.access())
                .holdings(false).stream()
                        .map(holding ->
                                row(holding, page, figures, open ? figures.money(worth.of(holding.reel())) : ""))
                        .toList();
        site.show(request, "Rack", "serve/rack.jte", Map.of("reels", rows, "money", open));
    }

    private static RackRow row(Holding holding, StockPage page, Figures figures, String worth) {
        Reel reel = holding.reel();
        return new RackRow(
                reel.id(),
                reel.rope(),
                reel.lot(),
                figures.written(reel.contents().written()),
                reel.where().place(),
                page.toKnow(holding),
                worth,
                PATH + Sent.path(reel.id()));
    }

    private void coming(Context request, ShopNow now) {
        FormView form = new ReelForms(now.shop(), loft.figures(now), Keys.random()).received();
        String reel = Sent.asked(request, "reel");
        show(request, reel.isEmpty() ? form : form.with("reel", reel));
    }

    private void show(Context request, FormView form) {
        site.show(request, form.title(), "serve/receive.jte", Map.of("form", form));
    }

    private void receive(Context request, ShopNow now, String who) {
        String booking = Sent.id(request);
        Form form = Form.of(request);
        ReelDeeds.Done done = new ReelDeeds(now, form, act -> Sent.by(act, who, booking, request)).received();
        Booking became = done.booking().orElse(null);
        if (became instanceof Booking.Booked booked) {
            site.show(
                    request,
                    "Booked",
                    "serve/booked.jte",
                    Map.of(
                            "reel",
                            form.text("reel"),
                            "path",
                            PATH + Sent.path(form.text("reel")),
                            "label",
                            PrintScreen.LABEL + Sent.path(form.text("reel")),
                            "event",
                            booked.event().number(),
                            "told",
                            done.told()));
        } else {
            request.status(ReelScreen.NOT_BOOKED);
            show(
                    request,
                    new ReelForms(now.shop(), loft.figures(now), booking)
                            .received()
                            .of(form, became instanceof Booking.Refused refused ? Wrong.sentence(refused) : ""));
        }
    }
}
