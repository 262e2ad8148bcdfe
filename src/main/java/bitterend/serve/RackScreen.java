package bitterend.serve;

import bitterend.report.Figures;
import bitterend.report.StockPage;
import bitterend.stock.Holding;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import bitterend.work.ShopNow;
import bitterend.work.rack.ArriveReel;
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
        config.routes.get("/rack", request -> loft.whenKept(request, site, now -> rack(request, now, Said.NOTHING)));
        config.routes.get(ReelForms.RECEIVE, request -> loft.whenKept(request, site, now -> coming(request, now)));
        config.routes.post(
                ReelForms.RECEIVE,
                request -> loft.whenKnown(request, site, people, (now, who) -> receive(request, now, who)));
        config.routes.post(
                OnTheWayRows.ARRIVE,
                request -> loft.whenKnown(request, site, people, (now, who) -> arrive(request, now, who)));
    }

    /**
     * What is said of a form for a reel on the way that was sent.
     *
     * @param form the form
     * @param booking the id that it is booked under
     * @param refused why it was not booked
     */
    private record Said(Form form, String booking, String refused) {
        static final Said NOTHING = new Said(Form.blank(), "", "");

        OnTheWayRow on(OnTheWayRow row) {
            return isMeant(row) ? row.with(row.form().of(form, refused).under(booking)) : row;
        }

        /** What has no form any more to be said at: the reel is not on the way. */
        String besides(List<OnTheWayRow> rows) {
            return rows.stream().anyMatch(this::isMeant) ? "" : refused;
        }

        private boolean isMeant(OnTheWayRow row) {
            return row.comes() && row.id().equals(form.text("about"));
        }
    }

    private void rack(Context request, ShopNow now, Said said) {
        Figures figures = loft.figures(now);
        StockPage page = new StockPage(figures, ZoneId.systemDefault());
        boolean open = office.isOpen(request);
        ReelWorth worth = new ReelWorth(now, Loft.day(now));
        List<RackRow> rows = new AskRack(loft.access())
                .holdings(false).stream()
                        .map(holding ->
                                row(holding, page, figures, open ? figures.money(worth.of(holding.reel())) : ""))
                        .toList();
        List<OnTheWayRow> between = new OnTheWayRows(figures, new AskRack(loft.access()).lofts())
                .of(ArriveReel.onTheWay(loft.access())).stream().map(said::on).toList();
        site.show(
                request,
                "Rack",
                "serve/rack.jte",
                Map.of("reels", rows, "money", open, "between", between, "told", said.besides(between)));
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
            cameIn(request, booked, form.text("reel"), done.told());
        } else {
            request.status(ReelScreen.NOT_BOOKED);
            show(
                    request,
                    new ReelForms(now.shop(), loft.figures(now), booking)
                            .received()
                            .of(form, became instanceof Booking.Refused refused ? Wrong.sentence(refused) : ""));
        }
    }

    private void arrive(Context request, ShopNow now, String who) {
        String booking = Sent.id(request);
        Form form = Form.of(request);
        ReelDeeds.Done done =
                new ReelDeeds(now, form, act -> Sent.by(act, who, booking, request)).arrived(form.text("about"));
        Booking became = done.booking().orElse(null);
        if (became instanceof Booking.Booked booked) {
            String here = form.text("reel");
            cameIn(request, booked, here.isEmpty() ? form.text("about") : here, done.told());
        } else {
            request.status(ReelScreen.NOT_BOOKED);
            rack(
                    request,
                    now,
                    new Said(form, booking, became instanceof Booking.Refused refused ? Wrong.sentence(refused) : ""));
        }
    }

    private void cameIn(Context request, Booking.Booked booked, String reel, List<String> told) {
        site.show(
                request,
                "Booked",
                "serve/booked.jte",
                Map.of(
                        "reel",
                        reel,
                        "path",
                        PATH + Sent.path(reel),
                        "label",
                        PrintScreen.LABEL + Sent.path(reel),
                        "event",
                        booked.event().number(),
                        "told",
                        told));
    }
}
