package bitterend.serve;

import bitterend.day.CountedRack;
import bitterend.exchange.CountCsv.Row;
import bitterend.exchange.StockText;
import bitterend.report.CountPage;
import bitterend.report.sheet.PagePart;
import bitterend.stock.Counted;
import bitterend.work.Booking;
import bitterend.work.ShopNow;
import bitterend.work.rack.CountRack;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What a count found, in rope and money; accepted as one event, or thrown away. */
final class CountResult implements Screen {
    static final String PATH = "/count/result";

    private final Loft loft;
    private final Site site;
    private final People people;
    private final CountDraft draft;
    private final Office office;

    CountResult(Loft loft, Site site, People people, CountDraft draft, Office office) {
        this.office = office;
        this.loft = loft;
        this.site = site;
        this.people = people;
        this.draft = draft;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(PATH, request -> show(request, ""));
        config.routes.post(
                PATH, request -> loft.whenKnown(request, site, people, (now, who) -> accept(request, now, who)));
        config.routes.post("/count/drop", this::drop);
    }

    private List<Counted> counted() {
        return draft.rows().stream().map(Row::counted).toList();
    }

    private void show(Context request, String wrong) {
        Optional<ShopNow> now = loft.now();
        if (now.isEmpty() || !loft.access().keepsLedger()) {
            site.tell(request, now.isEmpty() ? Loft.BROKEN : RackScreen.NO_LEDGER);
            return;
        }
        CountedRack rack =
                new CountRack(CountScreen.desk(now.get(), request, "", "", ""), now.get()).compare(counted());
        Map<String, Object> values = new HashMap<>();
        values.put("blocks", PagePart.blocks(new CountPage(loft.figures(now.get()), office.isOpen(request)).of(rack)));
        values.put(
                "apart",
                rack.apart().stream()
                        .map(line -> new FormField.Choice(
                                line.book().id(),
                                line.book().id() + ", " + line.apart().words()))
                        .toList());
        values.put("something", !rack.differing().isEmpty() || !rack.apart().isEmpty());
        values.put(
                "strangers",
                rack.strangers().stream()
                        .map(stranger ->
                                new Way(ReelForms.RECEIVE + "?reel=" + Sent.path(stranger.reel()), stranger.reel()))
                        .toList());
        values.put("wrong", wrong);
        values.put("booking", Keys.random());
        site.show(request, "What the count found", "serve/counted.jte", values);
    }

    /** Books the whole of it; then the draft has served. */
    private void accept(Context request, ShopNow now, String who) {
        Form form = Form.of(request);
        Set<String> sure =
                request.formParams("sure").stream().map(Sent::oneLine).collect(Collectors.toSet());
        Booking booking = new CountRack(
                        CountScreen.desk(now, request, who, Sent.id(request), form.or("note", StockText::words, "")),
                        now)
                .accept(counted(), sure);
        if (booking instanceof Booking.Booked booked) {
            draft.end();
            site.show(
                    request,
                    "Booked",
                    "serve/countbooked.jte",
                    Map.of(
                            "event",
                            booked.event().number(),
                            "reels",
                            booked.event().movements().size(),
                            "first",
                            booked.event().movements().get(0).entry().reel(),
                            "booking",
                            Keys.random(),
                            "told",
                            booked.told()));
        } else {
            request.status(ReelScreen.NOT_BOOKED);
            show(request, booking instanceof Booking.Refused refused ? Wrong.sentence(refused) : "");
        }
    }

    private void drop(Context request) {
        if (people.who(request).isEmpty()) {
            site.tell(request, People.FIRST);
        } else if (Sent.text(request, "sure").equals("yes")) {
            draft.end();
            Back.to(request, CountScreen.PATH);
        } else {
            Back.to(request, PATH);
        }
    }
}
