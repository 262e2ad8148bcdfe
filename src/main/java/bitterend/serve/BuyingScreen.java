package bitterend.serve;

import bitterend.buying.Share;
import bitterend.buying.Spending;
import bitterend.buying.Study;
import bitterend.exchange.Settings;
import bitterend.exchange.StockText;
import bitterend.front.ProgressWords;
import bitterend.front.TradePages;
import bitterend.measure.Moments;
import bitterend.measure.Parsed;
import bitterend.report.Figures;
import bitterend.report.page.Document;
import bitterend.serve.FormField.Choice;
import bitterend.serve.KeptPages.Kept;
import bitterend.work.ShopNow;
import bitterend.work.trade.AdviseReels;
import bitterend.work.trade.StudyReels;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which reels to buy, for the orders in hand or for work like the past: worked out while people look on, and kept. */
final class BuyingScreen implements Screen {
    private static final String PATH = "/buying";
    private static final String ADVICE = "advice";
    private static final String STUDY = "study";
    private static final int FEWEST = 4;
    private static final int MOST = 100_000;
    private static final int LONGEST = 3_600;

    private final Loft loft;
    private final Site site;
    private final KeptScreen pages;

    BuyingScreen(Loft loft, Site site, Runs runs) {
        this.loft = loft;
        this.site = site;
        pages = new KeptScreen(
                site, runs, PATH, "Buying", "Looking for the reels to buy.", "Stop, and show what there is");
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(PATH, request -> show(request, Form.blank()));
        config.routes.post(PATH, this::begin);
        pages.serve(config);
    }

    private void show(Context request, Form form) {
        Optional<ShopNow> now = loft.now();
        if (now.isEmpty()) {
            site.tell(request, Loft.BROKEN);
            return;
        }
        Map<String, Object> values = new HashMap<>();
        values.put("running", pages.isBusy());
        values.put("offered", AdviseReels.isOffered(now.get().shop()));
        values.put(
                "forms",
                forms(now.get()).stream().map(each -> each.of(form, "")).toList());
        values.put("kept", pages.ways());
        site.show(request, "Buying", "serve/buying.jte", values);
    }

    private static List<FormView> forms(ShopNow now) {
        List<Choice> ropes = now.shop().catalogue().ropes().stream()
                .map(rope -> new Choice(rope.id(), rope.name()))
                .toList();
        return List.of(
                new FormView(
                        PATH,
                        ADVICE,
                        "For the orders in hand",
                        "",
                        List.of(
                                FormField.typed("seconds", "Look no longer than so many seconds", "20")
                                        .with("20"),
                                FormField.typed(
                                        "budget", "Pay no more than; empty for what the settings say", "5000 EUR"),
                                FormField.typed(
                                        "most",
                                        "Buy rope for no more weeks than; empty for what the settings say",
                                        "26")),
                        "Which reels to order",
                        Keys.random(),
                        true),
                new FormView(
                        PATH,
                        STUDY,
                        "For work like that of the past",
                        "",
                        List.of(
                                FormField.typed("rope", "Rope; empty for all that have offers and a past", "")
                                        .offering(ropes),
                                FormField.typed("scenarios", "Scenarios", "200").with("200"),
                                FormField.typed("weeks", "Weeks of a scenario", "52")
                                        .with("52")),
                        "Study it",
                        Keys.random(),
                        true));
    }

    private void begin(Context request) {
        ShopNow now = loft.now().orElse(null);
        if (now == null || !AdviseReels.isOffered(now.shop())) {
            site.tell(request, now == null ? Loft.BROKEN : "Nothing is worked out: " + TradePages.NO_OFFER + ".");
            return;
        }
        Form form = Form.of(request);
        Optional<Run.Work<Kept>> work = form.text("what").equals(STUDY) ? study(now, form) : advice(now, form);
        if (work.isEmpty()) {
            show(request, form);
            return;
        }
        pages.begin(request, work.get());
    }

    private Optional<Run.Work<Kept>> advice(ShopNow now, Form form) {
        int seconds = form.must("seconds", text -> whole(text, 1, LONGEST), 1);
        Settings settings = now.shop().settings();
        Spending usual = settings.spending();
        Spending spending = new Spending(
                form.or("budget", settings::budget, usual.budget()),
                form.or("most", StockText::weeks, usual.mostWeeks()));
        AdviseReels.Request asked =
                new AdviseReels.Request(Loft.day(now), Duration.ofSeconds(seconds), 0, threads(), spending);
        return form.sound()
                ? Optional.of(ear -> advised(
                        now,
                        new AdviseReels(now)
                                .advise(asked, ear.watcher(now.shop().settings().money()))))
                : Optional.empty();
    }

    private Kept advised(ShopNow now, AdviseReels.Result result) {
        if (!(result instanceof AdviseReels.Result.Advised advised)) {
            throw new IllegalStateException("offers that were there");
        }
        return kept(now, "For the orders in hand", TradePages.of(now.shop(), advised, loft.figures(now)));
    }

    private Optional<Run.Work<Kept>> study(ShopNow now, Form form) {
        int scenarios = form.must("scenarios", text -> whole(text, FEWEST, MOST), FEWEST);
        int weeks = form.must("weeks", StockText::weeks, 1);
        String rope = form.text("rope");
        if (!form.sound()) {
            return Optional.empty();
        }
        StudyReels verb = new StudyReels(
                now,
                new StudyReels.Request(
                        new Study.Size(0, scenarios, weeks),
                        rope.isEmpty() ? List.of() : List.of(rope),
                        Loft.day(now),
                        null,
                        false));
        if (verb.isEmpty()) {
            form.wrong("rope", TradePages.NOTHING_TO_STUDY);
            return Optional.empty();
        }
        String title = "For work like that of the past" + (rope.isEmpty() ? "" : ", " + rope);
        return Optional.of(ear -> studied(now, title, verb, ear));
    }

    private Kept studied(ShopNow now, String title, StudyReels verb, Run.Ear ear) {
        StudyReels.Watched watched = new StudyReels.Watched(
                threads(),
                ear.stop(),
                each -> (done, all) -> ear.told().accept(each, ProgressWords.scenarios(each, done, all)));
        Figures figures = loft.figures(now);
        return kept(now, title, TradePages.of(now.shop(), verb.found(verb.workedOut(Share.ALL, watched)), figures));
    }

    private static Kept kept(ShopNow now, String title, Document document) {
        return new Kept(Keys.random(), title, Moments.text(now.at().clock().instant()), Map.of("purchaser", document));
    }

    /** One core is left to those at the bench. */
    private static int threads() {
        return Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
    }

    private static Parsed<Integer> whole(String text, int least, int most) {
        boolean figures = text.matches("[0-9]{1,6}");
        return figures && Integer.parseInt(text) >= least && Integer.parseInt(text) <= most
                ? Parsed.of(Integer.parseInt(text))
                : Parsed.refused("a whole number from " + least + " to " + most);
    }
}
