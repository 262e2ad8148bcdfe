package bitterend.serve;

import bitterend.exchange.QuoteRequestFile;
import bitterend.exchange.QuoteRequestReading;
import bitterend.finding.Finding;
import bitterend.finding.NaturalOrder;
import bitterend.front.QuoteUnits;
import bitterend.front.TradePages;
import bitterend.measure.Moments;
import bitterend.quoting.QuoteRequest;
import bitterend.quoting.life.QuoteEvent.Said;
import bitterend.report.Figures;
import bitterend.report.page.Document;
import bitterend.serve.KeptPages.Kept;
import bitterend.work.ShopNow;
import bitterend.work.quotes.AnswerQuote;
import bitterend.work.trade.PriceRequest;
import bitterend.work.trade.PriceRequest.Result;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Quotes: lines are typed or pasted, looked at by the code that reads a file of them, priced behind the page, and kept. */
final class QuotesScreen implements Screen {
    private static final String PATH = "/quotes";
    private static final Duration TIME = Duration.ofSeconds(30);
    private static final int MOST = 500;
    private static final int LINES = 3;
    private final Loft loft;
    private final Site site;
    private final People people;
    private final KeptScreen pages;
    private final Once done = new Once();

    QuotesScreen(Loft loft, Site site, People people, Runs runs) {
        this.loft = loft;
        this.site = site;
        this.people = people;
        pages = new KeptScreen(site, runs, PATH, "Quote", "The quote is being drawn up.", "Stop, and keep nothing");
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(PATH, this::asked);
        config.routes.post(PATH, this::sent);
        pages.serve(config);
    }

    /** Nothing yet, or the lines of a kept quote. */
    private void asked(Context request) {
        String revised = Sent.asked(request, "revise");
        EarlierQuote earlier = loft.now()
                .map(now -> EarlierQuote.of(
                        now, revised.isEmpty() ? Sent.asked(request, "from") : revised, !revised.isEmpty()))
                .orElse(EarlierQuote.NONE);
        List<String> told = loft.now().flatMap(now -> earlier.revised() ? bar(now, earlier) : Optional.empty()).stream()
                .toList();
        show(request, earlier.typed(), told.isEmpty() ? earlier : EarlierQuote.NONE, told);
    }

    private void show(Context request, TypedRequest typed, EarlierQuote earlier, List<String> told) {
        ShopNow now = loft.now().orElse(null);
        if (now == null) {
            site.tell(request, Loft.BROKEN);
            return;
        }
        RowNotes notes = notes(now, typed, earlier);
        List<BookRow> rows = new ArrayList<>();
        typed.lines().forEach(line -> rows.add(notes.row(rows.size() + 1, line)));
        List<String> all = new ArrayList<>(told);
        all.addAll(notes.elsewhere(rows.size()));
        while (rows.size() < LINES) {
            rows.add(new BookRow(rows.size() + 1, List.of(), "", List.of(), Set.of()));
        }
        TreeSet<String> customers = new TreeSet<>();
        TreeSet<String> orders = new TreeSet<>(NaturalOrder.IDS);
        now.shop().orders().forEach(line -> {
            customers.add(line.assembly().ordered().customer());
            orders.add(line.assembly().ordered().source().order());
        });
        customers.addAll(now.shop().customers().keySet());
        customers.remove("");
        Map<String, Object> values = new HashMap<>();
        values.put("running", pages.isBusy());
        values.put("number", typed.number());
        values.put("customer", typed.customer());
        values.put("accept", typed.accept());
        values.put("customers", List.copyOf(customers));
        values.put("orders", List.copyOf(orders));
        values.put("columns", shown(typed));
        values.put("rows", rows);
        values.put("told", all);
        values.put("earlier", earlier.number());
        values.put("revised", earlier.revised());
        values.put("booking", Keys.random());
        values.put("kept", pages.ways());
        site.show(request, "Quotes", "serve/quotes.jte", values);
    }

    private RowNotes notes(ShopNow now, TypedRequest typed, EarlierQuote earlier) {
        if (typed.lines().isEmpty()) {
            return new RowNotes(List.of(), QuoteRequestFile.TYPED);
        }
        LocalCells cells = typed.inFileForm(loft.typed(), earlier);
        List<Finding> found = new ArrayList<>();
        cells.wrong()
                .forEach(each -> found.add(Finding.error(
                        QuoteRequestFile.TYPED, each.place(), each.field(), each.found(), each.expected())));
        QuoteRequestReading reading = typed.of(cells).reading(now);
        reading.findings().stream()
                .filter(each -> cells.wrong().stream()
                        .noneMatch(wrong -> wrong.place().equals(each.place())
                                && wrong.field().equals(each.field())))
                .forEach(found::add);
        RowNotes notes = new RowNotes(found, QuoteRequestFile.TYPED);
        Figures figures = loft.figures(now);
        reading.request().filter(asked -> cells.wrong().isEmpty()).ifPresent(asked -> asked.lines()
                .forEach(line -> notes.cut(line.assembly().origin().place(), line.demanded(), figures)));
        return notes;
    }

    private static List<BookColumn> shown(TypedRequest typed) {
        List<BookColumn> columns = new ArrayList<>();
        for (int column = 0; column < TypedRequest.COLUMNS.size(); column++) {
            int at = column;
            if (TypedRequest.USUAL.contains(TypedRequest.COLUMNS.get(at))
                    || typed.lines().stream().anyMatch(line -> !line.get(at).isBlank())) {
                columns.add(new BookColumn(at, TypedRequest.COLUMNS.get(at)));
            }
        }
        return columns;
    }

    private void sent(Context request) {
        ShopNow now = loft.now().orElse(null);
        if (now == null) {
            site.tell(request, Loft.BROKEN);
        } else if (Sent.text(request, "what").equals("order")) {
            String order = Sent.text(request, "order");
            QuoteRequestFile.ofOrder(now.shop(), order, Loft.day(now))
                    .ifPresentOrElse(
                            asked -> begin(request, now, asked, Sent.text(request, "accept")),
                            () -> show(
                                    request,
                                    TypedRequest.NOTHING,
                                    EarlierQuote.NONE,
                                    List.of("There is no order " + order + " in the order book.")));
        } else {
            drawn(request, now);
        }
    }

    private void drawn(Context request, ShopNow now) {
        PastedRows pasted = PastedRows.of(request.formParam("paste"), TypedRequest.COLUMNS, List.of("rope", "length"));
        TypedRequest typed = TypedRequest.of(request, pasted);
        EarlierQuote earlier = EarlierQuote.of(
                now,
                Sent.text(request, "earlier"),
                Sent.text(request, "revised").equals("yes"));
        List<String> told = new ArrayList<>();
        if (!pasted.unknown().isEmpty()) {
            told.add("A request has no column " + String.join(", ", pasted.unknown())
                    + "; the cells below it are left out. Its columns are " + String.join(", ", TypedRequest.COLUMNS)
                    + ".");
        }
        if (typed.lines().size() > MOST) {
            site.tell(request, "A quote has at most " + MOST + " lines here; ask for the rest in another.");
            return;
        }
        if (typed.lines().isEmpty()) {
            told.add("Type or paste at least one line.");
        }
        String what = Sent.text(request, "what");
        Optional<QuoteRequestReading> reading = (what.equals("draw") || what.equals("keep"))
                        && told.isEmpty()
                        && notes(now, typed, earlier).isSound()
                ? Optional.of(typed.of(typed.inFileForm(loft.typed(), earlier)).reading(now))
                : Optional.empty();
        Optional<QuoteRequest> asked = reading.flatMap(QuoteRequestReading::request);
        if (asked.isEmpty()) {
            show(request, typed, earlier, told);
        } else if (what.equals("keep")) {
            keep(request, now, earlier, reading.get());
        } else {
            begin(request, now, asked.get(), typed.accept());
        }
    }

    /** Why a quote gets no other revision; nothing where it may. */
    private static Optional<String> bar(ShopNow now, EarlierQuote earlier) {
        return new AnswerQuote(now, act -> act, "")
                .barOfRevision(earlier.number(), Loft.day(now))
                .map(QuoteBookScreen::capital);
    }

    /** Prices it and files it, under the name of who stands at the page. */
    private void keep(Context request, ShopNow now, EarlierQuote earlier, QuoteRequestReading reading) {
        String who = people.who(request);
        Optional<String> bar = who.isEmpty()
                ? Optional.of(People.FIRST)
                : pages.isBusy()
                        ? Optional.of("Another quote is being drawn up. Wait until it is, then keep this one.")
                        : earlier.revised()
                                ? bar(now, earlier).map(why -> "Nothing was kept. " + why)
                                : Optional.empty();
        String booking = Sent.id(request);
        if (bar.isPresent() || done.was(booking)) {
            site.tell(request, bar.orElse("This was done already: nothing was done a second time."));
            return;
        }
        Said said = new Said(who, Sent.text(request, "note"), booking);
        QuoteRequest asked = reading.request().orElseThrow().acceptedBy(Sent.text(request, "accept"));
        QuoteToKeep keeping = new QuoteToKeep(
                now, loft.figures(now), earlier, !Sent.text(request, "number").isEmpty(), said);
        pages.begin(request, ear -> keeping.kept(asked, reading, TIME, ear));
    }

    private void begin(Context request, ShopNow now, QuoteRequest asked, String accept) {
        pages.begin(request, ear -> priced(now, asked.acceptedBy(accept), ear));
    }

    private Kept priced(ShopNow now, QuoteRequest asked, Run.Ear ear) {
        Result result = new PriceRequest(now)
                .price(
                        asked,
                        Loft.day(now),
                        TIME,
                        ear.watcher(now.shop().settings().money()));
        Map<String, Document> made = new LinkedHashMap<>();
        if (result instanceof Result.Priced priced) {
            Figures figures = loft.figures(now);
            made.put(
                    "customer",
                    TradePages.forCustomer(
                            now.shop(), priced.quote(), new QuoteUnits(figures, false).forCustomer(priced.quote())));
            made.put("file", TradePages.forFile(now.shop(), priced.quote(), figures));
        } else {
            made.put(
                    "file",
                    QuoteToKeep.told(
                            "Request " + asked.id() + " cannot be priced", ((Result.NotPriced) result).problems()));
        }
        return new Kept(
                Keys.random(),
                "Quote " + asked.id() + (asked.customer().isEmpty() ? "" : " for " + asked.customer()),
                Moments.text(now.at().clock().instant()),
                made);
    }
}
