package bitterend.serve;

import bitterend.exchange.StockText;
import bitterend.exchange.quotes.KeptQuote;
import bitterend.finding.Findings;
import bitterend.quoting.life.QuoteStanding;
import bitterend.quoting.life.QuoteState;
import bitterend.report.QuoteComparePage;
import bitterend.report.QuoteLearnPage;
import bitterend.report.QuoteLifePage;
import bitterend.report.QuoteListPage;
import bitterend.report.sheet.PagePart;
import bitterend.work.ShopNow;
import bitterend.work.quotes.AnswerQuote;
import bitterend.work.quotes.AnswerQuote.Accepting;
import bitterend.work.quotes.AnswerQuote.Result;
import bitterend.work.quotes.QuoteBook;
import bitterend.work.quotes.SettleQuote;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The kept quotes: how far each has come, its pages as they were filed, and what the customer says. */
final class QuoteBookScreen implements Screen {
    /** Where they are listed. */
    static final String PATH = "/quotes/book";

    /** One of them, as {@code ?id=}. */
    static final String ONE = PATH + "/one";

    private static final String PAGE = PATH + "/page";
    private static final String NONE = "There is no such quote.";

    private final Loft loft;
    private final Site site;
    private final People people;

    QuoteBookScreen(Loft loft, Site site, People people) {
        this.loft = loft;
        this.site = site;
        this.people = people;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(PATH, request -> show(request, List.of()));
        config.routes.get(ONE, request -> one(request, Sent.asked(request, "id"), List.of()));
        config.routes.get(PAGE, this::page);
        config.routes.get(PATH + "/compare", request -> loft.whenRead(request, site, now -> compared(request, now)));
        config.routes.get(PATH + "/learn", request -> loft.whenRead(request, site, now -> learned(request, now)));
        config.routes.post(
                PATH, request -> loft.whenKnown(request, site, people, (now, who) -> booked(request, now, who)));
    }

    private void show(Context request, List<String> told) {
        ShopNow now = loft.now().orElse(null);
        if (now == null) {
            site.tell(request, Loft.BROKEN);
            return;
        }
        List<QuoteStanding> quotes = book(now).standing(Loft.day(now));
        List<QuoteRow> rows = quotes.stream().map(quote -> row(now, quote)).toList();
        site.show(
                request,
                "Kept quotes",
                "serve/quotebook.jte",
                Map.of(
                        "rows",
                        rows,
                        "told",
                        told,
                        "booking",
                        Keys.random(),
                        "sums",
                        PagePart.blocks(new QuoteListPage(loft.figures(now)).sums(quotes))));
    }

    /** One quote: how it stands, its revisions and what each changed, and what happened to it. */
    private void one(Context request, String number, List<String> told) {
        ShopNow now = loft.now().orElse(null);
        Optional<QuoteStanding> standing =
                Optional.ofNullable(now).flatMap(shop -> book(shop).standing(number, Loft.day(shop)));
        if (now == null || standing.isEmpty()) {
            site.tell(request, now == null ? Loft.BROKEN : NONE);
            return;
        }
        QuoteLifePage life = new QuoteLifePage(loft.figures(now));
        List<KeptQuote> revisions = book(now).revisions(number);
        Map<String, Object> values = new HashMap<>();
        values.put("row", row(now, standing.get()));
        values.put("told", told);
        values.put("booking", Keys.random());
        values.put(
                "revisions",
                revisions.stream().map(kept -> kept.head().name().revision()).toList());
        values.put(
                "blocks",
                PagePart.blocks(life.of(
                        standing.get(),
                        revisions.stream()
                                .map(kept -> new QuoteLifePage.Revision(kept.head(), kept.said(), kept.work()))
                                .toList())));
        values.put("accepted", standing.get().state() == QuoteState.ACCEPTED);
        site.show(request, "Quote " + number, "serve/quoteone.jte", values);
    }

    private void compared(Context request, ShopNow now) {
        String number = Sent.asked(request, "id");
        SettleQuote.Result found = new SettleQuote(now, Loft.day(now)).ofQuote(number);
        if (found instanceof SettleQuote.Result.Settled settled) {
            site.show(request, new QuoteComparePage(loft.figures(now)).of(settled.after()));
        } else if (found instanceof SettleQuote.Result.NothingCut nothing) {
            site.show(request, QuoteComparePage.nothing(number, nothing.why()));
        } else {
            site.tell(request, capital(((SettleQuote.Result.Refused) found).why()));
        }
    }

    /** What the work says, as a sentence of a page. */
    static String capital(String words) {
        String said = Wrong.onPage(words);
        return said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1) + ".";
    }

    private void learned(Context request, ShopNow now) {
        site.show(
                request,
                new QuoteLearnPage(loft.figures(now))
                        .of(now.shop().settings().name(), new SettleQuote(now, Loft.day(now)).learned()));
    }

    static QuoteBook book(ShopNow now) {
        return new QuoteBook(now.at(), now.shop().settings().money(), new Findings());
    }

    private QuoteRow row(ShopNow now, QuoteStanding quote) {
        QuoteState state = quote.state();
        return new QuoteRow(
                quote.head().name().number(),
                quote.head().name().words(),
                quote.head().customer(),
                loft.figures(now).currency().print(quote.head().total()),
                quote.head().validUntil().toString(),
                QuoteListPage.state(quote),
                state == QuoteState.DRAWN_UP || state == QuoteState.SENT,
                state == QuoteState.DRAWN_UP,
                quote.last().isPresent());
    }

    private void page(Context request) {
        String revision = Sent.asked(request, "rev");
        int asked = revision.matches("[0-9]{1,3}") ? Integer.parseInt(revision) : 0;
        Optional<KeptQuote> kept = loft.now().flatMap(now -> book(now).read(Sent.asked(request, "id"), asked));
        if (kept.isEmpty()) {
            site.tell(request, NONE);
            return;
        }
        KeptQuote.Pages pages = kept.get().pages();
        site.show(request, Sent.asked(request, "page").equals("file") ? pages.forFile() : pages.forCustomer());
    }

    private void booked(Context request, ShopNow now, String who) {
        String booking = Sent.id(request);
        AnswerQuote answer =
                new AnswerQuote(now, act -> Sent.by(act, who, booking, request), Sent.text(request, "note"));
        Result result = done(answer, request, Loft.day(now));
        List<String> told = result instanceof Result.Refused refused
                ? List.of("Not done: " + Wrong.onPage(refused.why()) + ".")
                : ((Result.Done) result)
                        .told().stream().map(QuoteBookScreen::capital).toList();
        String number = Sent.text(request, "quote");
        boolean ofOne = Sent.text(request, "where").equals("one");
        if (told.isEmpty()) {
            Back.to(request, ofOne ? ONE + "?id=" + Sent.path(number) : PATH);
        } else if (ofOne) {
            one(request, number, told);
        } else {
            show(request, told);
        }
    }

    private Result done(AnswerQuote answer, Context request, LocalDate day) {
        String number = Sent.text(request, "quote");
        return switch (Sent.text(request, "what")) {
            case "sent" -> answer.sent(number, day);
            case "accept" -> accepted(answer, request, number, day);
            case "decline" -> answer.declined(number, day);
            case "back" -> answer.back(number, day);
            default -> new Result.Refused("the page asked for nothing that can be done");
        };
    }

    private Result accepted(AnswerQuote answer, Context request, String number, LocalDate day) {
        String order = Sent.text(request, "order");
        String due = Sent.text(request, "due");
        Optional<LocalDate> read = loft.typed().day(StockText::day).apply(due).value();
        if (!due.isEmpty() && read.isEmpty()) {
            return new Result.Refused("that day could not be read; write it such as 2026-03-02");
        }
        if (!order.isEmpty() && StockText.order(order).value().isEmpty()) {
            return new Result.Refused("an order cannot have that number");
        }
        return answer.accepted(
                number,
                day,
                new Accepting(
                        order, read.map(date -> Map.of("due", date.toString())).orElse(Map.of())));
    }
}
