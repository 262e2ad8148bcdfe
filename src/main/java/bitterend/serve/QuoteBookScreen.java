package bitterend.serve;

import bitterend.exchange.StockText;
import bitterend.exchange.quotes.KeptQuote;
import bitterend.finding.Findings;
import bitterend.quoting.life.QuoteStanding;
import bitterend.quoting.life.QuoteState;
import bitterend.report.QuoteListPage;
import bitterend.work.ShopNow;
import bitterend.work.quotes.AnswerQuote;
import bitterend.work.quotes.AnswerQuote.Accepting;
import bitterend.work.quotes.AnswerQuote.Result;
import bitterend.work.quotes.QuoteBook;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The kept quotes: how far each has come, its pages as they were filed, and what the customer says. */
final class QuoteBookScreen implements Screen {
    /** Where they are listed. */
    static final String PATH = "/quotes/book";

    private static final String PAGE = PATH + "/page";

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
        config.routes.get(PAGE, this::page);
        config.routes.post(PATH, this::booked);
    }

    private void show(Context request, List<String> told) {
        ShopNow now = loft.now().orElse(null);
        if (now == null) {
            site.tell(request, Loft.BROKEN);
            return;
        }
        List<QuoteRow> rows = book(now).standing(Loft.day(now)).stream()
                .map(quote -> row(now, quote))
                .toList();
        site.show(
                request,
                "Kept quotes",
                "serve/quotebook.jte",
                Map.of("rows", rows, "told", told, "booking", Keys.random()));
    }

    private static QuoteBook book(ShopNow now) {
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
        Optional<KeptQuote> kept = loft.now().flatMap(now -> book(now).read(Sent.asked(request, "id"), 0));
        if (kept.isEmpty()) {
            site.tell(request, "There is no such quote.");
            return;
        }
        KeptQuote.Pages pages = kept.get().pages();
        site.show(request, Sent.asked(request, "page").equals("file") ? pages.forFile() : pages.forCustomer());
    }

    private void booked(Context request) {
        String who = people.who(request);
        ShopNow now = loft.now().orElse(null);
        if (who.isEmpty() || now == null) {
            site.tell(request, who.isEmpty() ? People.FIRST : Loft.BROKEN);
            return;
        }
        String booking = Sent.id(request);
        AnswerQuote answer =
                new AnswerQuote(now, act -> Sent.by(act, who, booking, request), Sent.text(request, "note"));
        Result result = done(answer, request, Loft.day(now));
        if (result instanceof Result.Refused refused) {
            show(request, List.of("Not done: " + refused.why() + "."));
        } else {
            Back.to(request, PATH);
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
