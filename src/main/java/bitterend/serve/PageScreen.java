package bitterend.serve;

import bitterend.day.OrdersTold;
import bitterend.finding.Findings;
import bitterend.report.Figures;
import bitterend.report.OrderWords;
import bitterend.report.OrdersPage;
import bitterend.report.page.Document;
import bitterend.work.NamedPlan;
import bitterend.work.PlanGate;
import bitterend.work.Plans;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import bitterend.work.orders.AskOrders;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.function.Function;

/** Pages of the command line that are looked at and no more. */
final class PageScreen implements Screen {
    /** Where an order is looked at. */
    static final String ORDER = "/orders?order=";

    /** Where a plan is looked at, whether or not it is in force. */
    static final String PLAN = "/plans?number=";

    private final Loft loft;
    private final Site site;

    PageScreen(Loft loft, Site site) {
        this.loft = loft;
        this.site = site;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get("/orders", request -> show(request, now -> orders(now, Sent.asked(request, "order"))));
        config.routes.get("/plans", request -> show(request, now -> numbered(now, Sent.asked(request, "number"))));
        config.routes.get("/week", request -> show(request, now -> plan(now, "week")));
        config.routes.get("/tables", request -> show(request, now -> plan(now, "tables")));
        config.routes.get("/reasons", request -> show(request, now -> plan(now, "reasons")));
        config.routes.get("/changes", request -> show(request, now -> plan(now, "changes")));
    }

    private void show(Context request, Function<ShopNow, Optional<Document>> page) {
        Optional<ShopNow> now = loft.now();
        Optional<Document> document = now.flatMap(page);
        if (document.isPresent()) {
            site.show(request, document.get());
        } else {
            site.tell(request, now.isEmpty() ? Loft.BROKEN : "There is no such plan, or none that can be cut by.");
        }
    }

    private Optional<Document> orders(ShopNow now, String order) {
        OrdersTold all = new AskOrders(now, Loft.day(now)).status();
        Figures figures = loft.figures(now);
        OrdersPage page = new OrdersPage(new OrderWords(figures, now.at().named()));
        return Optional.of(page.of(
                        now.shop().settings().name(),
                        Loft.day(now),
                        order.isEmpty() ? all : all.ofOrder(order),
                        OrdersPage.By.ORDER)
                .with(TableScreen.link(TableScreen.ORDERS)));
    }

    private Optional<Document> numbered(ShopNow now, String number) {
        Plans plans = now.at().plans(new Findings());
        return NamedPlan.number(number)
                .filter(plans.numbers()::contains)
                .flatMap(each -> plans.read(each, new Findings()))
                .flatMap(kept -> new PlanGate(now, plans).verdict(kept).passed())
                .map(passed -> loft.shown(now, passed).screen());
    }

    private Optional<Document> plan(ShopNow now, String part) {
        return loft.inForce(now).flatMap(Verdict::passed).flatMap(passed -> loft.shown(now, passed)
                .part(part)
                .map(page -> part.equals("tables") ? page.with(TableScreen.link(TableScreen.PLAN)) : page));
    }
}
