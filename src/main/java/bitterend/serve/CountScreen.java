package bitterend.serve;

import bitterend.catalogue.Rope;
import bitterend.exchange.CountCsv;
import bitterend.exchange.CountCsv.Row;
import bitterend.exchange.StockText;
import bitterend.exchange.TypedText;
import bitterend.measure.Length;
import bitterend.stock.Counted;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Reel;
import bitterend.work.ShopNow;
import bitterend.work.rack.CountRack;
import bitterend.work.rack.RackDesk;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Counts the rack place by place, one reel after another. The length of the books is shown to none but who asks for it: who
 * knows what must come out counts that.
 */
final class CountScreen implements Screen {
    static final String PATH = "/count";
    private static final String REEL = "/count/reel?id=";

    private final Loft loft;
    private final Site site;
    private final People people;
    private final CountDraft draft;

    CountScreen(Loft loft, Site site, People people, CountDraft draft) {
        this.loft = loft;
        this.site = site;
        this.people = people;
        this.draft = draft;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(PATH, request -> with(request, now -> places(request, now)));
        config.routes.get(
                "/count/reel",
                request -> with(request, now -> reel(request, now, Sent.asked(request, "id"), Form.blank())));
        config.routes.post("/count/reel", request -> with(request, now -> count(request, now)));
        config.routes.post("/count/stranger", request -> with(request, now -> stranger(request, now)));
    }

    private interface Asked {
        void of(ShopNow now);
    }

    private void with(Context request, Asked asked) {
        Optional<ShopNow> now = loft.now();
        if (now.isPresent() && loft.access().keepsLedger()) {
            asked.of(now.get());
        } else {
            site.tell(request, now.isEmpty() ? Loft.BROKEN : RackScreen.NO_LEDGER);
        }
    }

    private List<Holding> walk(ShopNow now) {
        return new CountRack(new RackDesk(now.at(), act -> act, ""), now).walk();
    }

    private void places(Context request, ShopNow now) {
        places(request, now, Form.blank());
    }

    private void places(Context request, ShopNow now, Form form) {
        Map<String, Row> rows = rows();
        Map<String, List<Holding>> byPlace = walk(now).stream()
                .collect(Collectors.groupingBy(
                        holding -> holding.reel().where().place(), LinkedHashMap::new, Collectors.toList()));
        List<CountPlace> places = byPlace.entrySet().stream()
                .map(place -> place(place.getKey(), place.getValue(), rows))
                .toList();
        Map<String, Object> values = new HashMap<>();
        values.put("places", places);
        values.put("counted", rows.size());
        values.put("stranger", strangers(now).of(form, ""));
        values.put(
                "strangers",
                rows.values().stream()
                        .filter(row -> walk(now).stream().noneMatch(holding -> holding.id()
                                .equals(row.counted().reel())))
                        .map(row -> row.counted().reel() + ", " + found(now, row))
                        .toList());
        site.show(request, "Count the rack", "serve/count.jte", values);
    }

    private Map<String, Row> rows() {
        Map<String, Row> rows = new LinkedHashMap<>();
        draft.rows().forEach(row -> rows.put(row.counted().reel(), row));
        return rows;
    }

    private static CountPlace place(String name, List<Holding> reels, Map<String, Row> rows) {
        List<Holding> open =
                reels.stream().filter(each -> !rows.containsKey(each.id())).toList();
        Holding first = open.isEmpty() ? reels.get(0) : open.get(0);
        return new CountPlace(
                name.isEmpty() ? "no place" : name,
                reels.size() - open.size(),
                reels.size(),
                REEL + Sent.path(first.id()));
    }

    private String found(ShopNow now, Row row) {
        Counted counted = row.counted();
        return (counted.found() == Counted.Found.THERE
                        ? loft.figures(now).written(counted.length())
                        : counted.found().word())
                + (row.who().isEmpty() ? "" : ", " + row.who());
    }

    private CountReel shown(ShopNow now, Reel reel, Map<String, Row> rows) {
        Row row = rows.get(reel.id());
        return new CountReel(
                reel.id(),
                reel.rope(),
                now.shop().catalogue().findRope(reel.rope()).map(Rope::name).orElse(""),
                reel.lot(),
                reel.where().place(),
                row == null ? "" : found(now, row),
                REEL + Sent.path(reel.id()));
    }

    private void reel(Context request, ShopNow now, String id, Form form) {
        List<Holding> walk = walk(now);
        Holding holding =
                walk.stream().filter(each -> each.id().equals(id)).findFirst().orElse(null);
        if (holding == null) {
            site.tell(request, "There is no reel " + id + " on the rack.");
            return;
        }
        Map<String, Row> rows = rows();
        String place = holding.reel().where().place();
        Map<String, Object> values = new HashMap<>();
        values.put("reel", shown(now, holding.reel(), rows));
        values.put("movements", holding.movements());
        values.put("unit", CountCsv.unit(loft.figures(now).units()));
        values.put("typed", form.text("length"));
        values.put("wrong", form.wrongAt("length"));
        values.put("uncertain", form.text("uncertainty"));
        values.put("wrongUncertain", form.wrongAt("uncertainty"));
        values.put(
                "books",
                Sent.asked(request, "books").equals("yes")
                        ? loft.figures(now).written(holding.reel().contents().written())
                        : "");
        values.put(
                "here",
                walk.stream()
                        .map(Holding::reel)
                        .filter(each -> each.where().place().equals(place))
                        .map(each -> shown(now, each, rows))
                        .toList());
        values.put(
                "left",
                walk.stream().filter(each -> !rows.containsKey(each.id())).count());
        site.show(request, "Count " + id, "serve/counting.jte", values);
    }

    /** Writes down what was found, and goes on to the next reel of the walk. */
    private void count(Context request, ShopNow now) {
        String who = people.who(request);
        String id = Sent.text(request, "reel");
        Holding holding = walk(now).stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElse(null);
        if (who.isEmpty() || holding == null) {
            site.tell(request, who.isEmpty() ? People.FIRST : "There is no reel " + id + " on the rack.");
            return;
        }
        Form form = Form.of(request);
        if (form.text("what").equals("again")) {
            draft.remove(id);
            Back.to(request, REEL + Sent.path(id));
            return;
        }
        Optional<Counted> counted = counted(now, form, id);
        if (counted.isEmpty()) {
            request.status(ReelScreen.NOT_BOOKED);
            reel(request, now, id, form);
            return;
        }
        Reel reel = holding.reel();
        draft.put(new Row(counted.get().after(seen(form, holding)), reel.where().place(), reel.rope(), who));
        Back.to(request, next(now, id));
    }

    /** As many movements as the reel had when its page was made: what was cut since then was not counted. */
    private static long seen(Form form, Holding holding) {
        String seen = form.text("movements");
        return seen.matches("[0-9]{1,9}") ? Long.parseLong(seen) : holding.movements();
    }

    private Optional<Counted> counted(ShopNow now, Form form, String reel) {
        TypedText typed = new TypedText(now.shop().settings());
        String unit = CountCsv.unit(loft.figures(now).units());
        Counted nothing = Counted.without(reel, Counted.Found.EMPTY);
        Counted read =
                switch (form.text("what")) {
                    case "missing" -> Counted.without(reel, Counted.Found.MISSING);
                    case "empty" -> nothing;
                    default -> form.must("length", typed.figures(text -> CountCsv.counted(reel, text, unit)), nothing);
                };
        Length uncertainty = form.or("uncertainty", typed.figures(StockText::allowance), Length.ZERO);
        if (read.found() == Counted.Found.THERE
                && !read.length().roundedDown().minus(uncertainty).isPositive()) {
            form.wrong("uncertainty", "expected less than what was counted");
        }
        return form.sound()
                ? Optional.of(new Counted(reel, read.found(), read.length(), uncertainty, read.known(), 0))
                : Optional.empty();
    }

    /** The next reel that is not counted, behind this one first; the result where all are. */
    private String next(ShopNow now, String id) {
        Map<String, Row> rows = rows();
        List<String> walk = walk(now).stream().map(Holding::id).toList();
        List<String> ahead = new ArrayList<>(walk.subList(walk.indexOf(id) + 1, walk.size()));
        ahead.addAll(walk);
        return ahead.stream()
                .filter(each -> !rows.containsKey(each))
                .findFirst()
                .map(each -> REEL + Sent.path(each))
                .orElse(CountResult.PATH);
    }

    private FormView strangers(ShopNow now) {
        return new FormView(
                "/count/stranger",
                "stranger",
                "Something that is in no book",
                "",
                List.of(
                        FormField.typed("reel", "What its label says, or a name for it", ""),
                        FormField.typed("rope", "Rope", "")
                                .offering(now.shop().catalogue().ropes().stream()
                                        .map(rope -> new FormField.Choice(rope.id(), rope.name()))
                                        .toList()),
                        FormField.typed("length", "Length", "23.4 m"),
                        FormField.typed("place", "Place", "")),
                "Write it down",
                Keys.random(),
                false);
    }

    private void stranger(Context request, ShopNow now) {
        String who = people.who(request);
        if (who.isEmpty()) {
            site.tell(request, People.FIRST);
            return;
        }
        Form form = Form.of(request);
        String reel = form.must("reel", StockText::reel, "");
        Optional<Counted> counted = counted(now, form, reel);
        if (walk(now).stream().anyMatch(holding -> holding.id().equals(reel))) {
            form.wrong("reel", "found \"" + reel + "\", which is in the books: count it at its place");
        }
        String place = form.or("place", StockText::words, "");
        String rope = form.or("rope", StockText::reel, "");
        if (counted.isEmpty() || !form.sound()) {
            request.status(ReelScreen.NOT_BOOKED);
            places(request, now, form);
            return;
        }
        draft.put(new Row(counted.get(), place, rope, who));
        Back.to(request, PATH);
    }

    /** What an event of the count is booked with. */
    static RackDesk desk(ShopNow now, Context request, String who, String booking, String note) {
        return new RackDesk(now.at(), (Event.Act act) -> Sent.by(act, who, booking, request), note);
    }
}
