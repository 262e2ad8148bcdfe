package bitterend.serve;

import bitterend.buying.IdleRope;
import bitterend.buying.reorder.Line;
import bitterend.buying.reorder.Proposal;
import bitterend.buying.reorder.Terms;
import bitterend.exchange.ProposalCsv;
import bitterend.front.TradePages;
import bitterend.market.Offer;
import bitterend.measure.Parsed;
import bitterend.report.ClaimsPage;
import bitterend.report.Figures;
import bitterend.report.IdlePage;
import bitterend.report.NewOrderPage;
import bitterend.report.page.Document;
import bitterend.report.sheet.PagePart;
import bitterend.work.ShopNow;
import bitterend.work.rack.AskClaims;
import bitterend.work.rack.AskIdle;
import bitterend.work.trade.PlaceOrder;
import bitterend.work.trade.ProposeOrder;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What to order again, edited and ordered; what came short or late; rope that nobody is likely to want. For the office. */
final class OrderAgainScreen implements Screen {
    private static final String PATH = "/buying/again";
    private static final String ORDER = "order";
    private static final String BACK = "back";
    private static final String ONCE_MORE = "once more";
    private static final String REELS = "reels of ";
    private static final int MOST_REELS = 1_000;
    private static final long SEED = 0;

    private final Loft loft;
    private final Site site;
    private final People people;
    private final Once done = new Once();

    OrderAgainScreen(Loft loft, Site site, People people) {
        this.loft = loft;
        this.site = site;
        this.people = people;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(PATH, request -> show(request, Form.blank(), "", false));
        config.routes.post(
                PATH, request -> loft.whenKnown(request, site, people, (now, who) -> sent(request, now, who)));
        config.routes.get("/buying/claims", request -> loft.whenKept(request, site, now -> claims(request, now)));
        config.routes.get("/buying/idle", request -> loft.whenRead(request, site, now -> idle(request, now)));
    }

    /** @param twice whether the same was ordered today already, so that somebody must say that it is to be ordered once more */
    private void show(Context request, Form form, String refused, boolean twice) {
        ShopNow now = loft.now().orElse(null);
        if (now == null) {
            site.tell(request, Loft.BROKEN);
            return;
        }
        Proposal proposal =
                new ProposeOrder(now).propose(new ProposeOrder.Request(Loft.day(now), null, Terms.NO_BUDGET, SEED));
        List<FormView> forms = Stream.of(order(now, proposal, twice), back())
                .map(view -> view.of(form, refused))
                .toList();
        Document page = TradePages.of(now.shop(), proposal, loft.figures(now));
        site.show(
                request,
                "What to order again",
                "serve/again.jte",
                Map.of("blocks", PagePart.blocks(page), "forms", forms));
    }

    private FormView order(ShopNow now, Proposal proposal, boolean twice) {
        Figures figures = loft.figures(now);
        List<FormField> fields = Stream.concat(
                        Stream.of(proposal.lines(), proposal.unpaid(), proposal.later())
                                .flatMap(List::stream)
                                .map(line -> FormField.typed(
                                                REELS + line.offer().id(), label(line, figures), "0")
                                        .with(proposal.lines().contains(line) ? "" + line.reels() : "0")),
                        twice
                                ? Stream.of(FormField.ticked(
                                        ONCE_MORE, "The same was ordered today already. Order it once more."))
                                : Stream.empty())
                .toList();
        return new FormView(PATH, ORDER, "Order it", "", fields, "Write it to on-order.csv", Keys.random(), true);
    }

    private static String label(Line line, Figures figures) {
        return line.need().rope() + ": reels of " + line.offer().id() + ", "
                + figures.written(line.offer().made().written()) + " at "
                + figures.money(line.each().fine());
    }

    private static FormView back() {
        return new FormView(PATH, BACK, "Take the last order back", "", List.of(), "Take it back", Keys.random(), true);
    }

    private void sent(Context request, ShopNow now, String who) {
        Form form = Form.of(request);
        boolean back = form.text("what").equals(BACK);
        List<ProposalCsv.Row> rows = back ? List.of() : rows(now, form);
        if (!form.sound()) {
            show(request, form, "", false);
            return;
        }
        String booking = Sent.id(request);
        if (done.was(booking)) {
            site.tell(request, "This was done already: nothing was done a second time.");
            return;
        }
        PlaceOrder verb = new PlaceOrder(now.at());
        if (isDoubtful(request, form, verb.look(now, rows, Loft.day(now)))) {
            done.forget(booking);
            return;
        }
        PlaceOrder.Result result = back ? verb.back(now) : verb.accept(now, rows, Loft.day(now), who);
        told(request, now, form, result, booking);
    }

    /** Whether the same was ordered today, and nobody said that it is meant once more: then it is asked. */
    private boolean isDoubtful(Context request, Form form, PlaceOrder.Result looked) {
        List<String> already = looked instanceof PlaceOrder.Result.Ordered ordered ? ordered.already() : List.of();
        if (already.isEmpty() || form.text(ONCE_MORE).equals("yes")) {
            return false;
        }
        request.status(ReelScreen.NOT_BOOKED);
        show(
                request,
                form,
                "Nothing was written: the same was ordered today already, " + String.join(", ", already) + ".",
                true);
        return true;
    }

    /** What is ordered of each offer that can be had, as it was typed. */
    private static List<ProposalCsv.Row> rows(ShopNow now, Form form) {
        LocalDate day = Loft.day(now);
        List<ProposalCsv.Row> rows = new ArrayList<>();
        for (Offer offer : now.shop().supplies().offers()) {
            String field = REELS + offer.id();
            if (!form.text(field).isEmpty()) {
                int reels = form.must(field, OrderAgainScreen::reels, 0);
                if (reels > 0) {
                    rows.add(new ProposalCsv.Row(
                            field,
                            offer.costing(offer.terms().price().at(reels)),
                            offer.id(),
                            reels,
                            offer.arrives(day),
                            ""));
                }
            }
        }
        return rows;
    }

    private static Parsed<Integer> reels(String text) {
        return text.matches("[0-9]{1,4}") && Integer.parseInt(text) <= MOST_REELS
                ? Parsed.of(Integer.parseInt(text))
                : Parsed.refused("a whole number of reels from 0 to " + MOST_REELS);
    }

    private void told(Context request, ShopNow now, Form form, PlaceOrder.Result result, String booking) {
        if (result instanceof PlaceOrder.Result.Ordered ordered) {
            site.show(
                    request,
                    new NewOrderPage(loft.figures(now), now.shop().catalogue())
                            .of(
                                    now.shop().settings().name(),
                                    now.shop().settings().quote().letter(),
                                    ordered.order()));
            return;
        }
        if (result instanceof PlaceOrder.Result.TakenBack) {
            show(request, Form.blank(), "", false);
            return;
        }
        done.forget(booking);
        request.status(ReelScreen.NOT_BOOKED);
        show(
                request,
                form,
                result instanceof PlaceOrder.Result.Refused refused
                        ? "Nothing was written: " + refused.why() + "."
                        : result instanceof PlaceOrder.Result.Wrong
                                ? "Nothing was written: on-order.csv could not be read with it."
                                : "Nothing was written: there is nothing to order or to take back.",
                false);
    }

    private void claims(Context request, ShopNow now) {
        site.show(
                request,
                new ClaimsPage(loft.figures(now))
                        .of(new AskClaims(now).ask(LocalDate.MIN, LocalDate.MAX, ""), LocalDate.MIN, LocalDate.MAX));
    }

    private void idle(Context request, ShopNow now) {
        LocalDate day = Loft.day(now);
        site.show(
                request,
                new IdlePage(loft.figures(now))
                        .of(day, IdleRope.Limits.USUAL, new AskIdle(now).ask(day, IdleRope.Limits.USUAL)));
    }
}
