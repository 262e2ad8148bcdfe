package bitterend.serve;

import bitterend.report.Fact;
import bitterend.report.Figures;
import bitterend.report.PaidFacts;
import bitterend.report.StockPage;
import bitterend.report.page.Document;
import bitterend.report.sheet.PagePart;
import bitterend.stock.Holding;
import bitterend.stock.Movement;
import bitterend.stock.Paid;
import bitterend.work.Booking;
import bitterend.work.ShopNow;
import bitterend.work.rack.AskRack;
import bitterend.work.rack.AskRack.Found;
import bitterend.work.rack.ReelWorth;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A reel with all that is known of it and all that befell it, and what may be done with it. */
final class ReelScreen implements Screen {
    /** What was sent was not booked: a field is to be looked at, or it does not go. */
    static final int NOT_BOOKED = 422;

    private final Loft loft;
    private final Site site;
    private final People people;
    private final Office office;

    ReelScreen(Loft loft, Site site, People people, Office office) {
        this.office = office;
        this.loft = loft;
        this.site = site;
        this.people = people;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(ReelForms.WORK, request -> show(request, Sent.asked(request, "id"), Said.NOTHING));
        config.routes.post(
                ReelForms.WORK,
                request -> loft.whenKnown(request, site, people, (now, who) -> work(request, now, who)));
    }

    /**
     * What is said of a form that was sent.
     *
     * @param form the form
     * @param booking the id that it is booked under
     * @param refused why it was not booked
     * @param told what else a person should know
     */
    private record Said(Form form, String booking, String refused, List<String> told) {
        static final Said NOTHING = new Said(Form.blank(), "", "", List.of());

        String id() {
            return booking.isEmpty() ? Keys.random() : booking;
        }
    }

    private void show(Context request, String id, Said said) {
        ShopNow now = loft.now().orElseThrow(() -> new NotFoundResponse(Loft.BROKEN));
        if (!loft.access().keepsLedger() || !(rack().history(id) instanceof Found.History history)) {
            throw new NotFoundResponse("There is no such reel.");
        }
        Figures figures = loft.figures(now);
        StockPage page = new StockPage(figures, ZoneId.systemDefault());
        Holding holding = holding(id);
        List<Fact> facts = new ArrayList<>(page.facts(holding));
        boolean money = office.isOpen(request);
        if (money) {
            rack().paid(id).ifPresent(paid -> facts.addAll(PaidFacts.of(paid, figures)));
        }
        if (!holding.gone() && money) {
            facts.add(new Fact(
                    "worth on the rack today", figures.money(new ReelWorth(now, Loft.day(now)).of(holding.reel()))));
        }
        Map<String, Object> values = new HashMap<>();
        values.put("id", id);
        values.put("rope", holding.reel().rope());
        values.put("lot", holding.reel().lot());
        values.put("trace", TraceScreen.LOT + Sent.path(holding.reel().lot()));
        values.put("label", PrintScreen.LABEL + Sent.path(id));
        values.put("facts", facts);
        values.put("told", said.told());
        List<Paid.Corrected> corrected = rack().corrected(id);
        values.put("forms", forms(now, holding, history.movements(), corrected, said));
        Document movements = page.movements(history.movements());
        values.put(
                "blocks",
                PagePart.blocks(
                        money
                                ? movements.with(PaidFacts.corrected(corrected, figures, ZoneId.systemDefault()))
                                : movements));
        site.show(request, "Reel " + id, "serve/reel.jte", values);
    }

    private List<FormView> forms(
            ShopNow now, Holding holding, List<Movement> movements, List<Paid.Corrected> corrected, Said said) {
        ReelForms forms = new ReelForms(now.shop(), loft.figures(now), Keys.random());
        Stream<FormView> work = holding.gone() ? Stream.of() : forms.of(holding.reel(), rack().lofts()).stream();
        return Stream.concat(work, Stream.of(forms.undo(holding.id(), movements, corrected)))
                .map(form -> form.what().equals(said.form().text("what"))
                        ? form.of(said.form(), said.refused()).under(said.id())
                        : form)
                .toList();
    }

    private AskRack rack() {
        return new AskRack(loft.access());
    }

    private Holding holding(String id) {
        return rack().holdings(true).stream()
                .filter(each -> each.reel().id().equals(id))
                .findFirst()
                .orElseThrow(() -> new NotFoundResponse("There is no such reel."));
    }

    private void work(Context request, ShopNow now, String who) {
        String reel = Sent.text(request, "about");
        String booking = Sent.id(request);
        Form form = Form.of(request);
        ReelDeeds.Done done = new ReelDeeds(now, form, act -> Sent.by(act, who, booking, request)).of(reel);
        Booking became = done.booking().orElse(null);
        if (became instanceof Booking.Booked && done.told().isEmpty()) {
            Back.to(request, RackScreen.PATH + Sent.path(reel));
        } else if (became instanceof Booking.Booked) {
            show(request, reel, new Said(Form.blank(), "", "", done.told()));
        } else {
            request.status(NOT_BOOKED);
            String why = became instanceof Booking.Refused refused ? Wrong.sentence(refused) : "";
            show(request, reel, new Said(form, booking, why, done.told()));
        }
    }
}
