package bitterend.serve;

import bitterend.report.OrdersTables;
import bitterend.report.RackTable;
import bitterend.report.page.Block;
import bitterend.report.page.Document;
import bitterend.report.table.DataTable;
import bitterend.report.table.TableBook;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import bitterend.work.orders.AskOrders;
import bitterend.work.rack.AskRack;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** Tables to take into a spreadsheet: the orders, the plan in force, the rack. What rope costs needs the office code. */
final class TableScreen implements Screen {
    static final String ORDERS = "/workbook/orders";
    static final String PLAN = "/workbook/plan";
    private static final String RACK = "/workbook/rack";
    private static final String WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private final Loft loft;
    private final Site site;
    private final Office office;

    TableScreen(Loft loft, Site site, Office office) {
        this.loft = loft;
        this.site = site;
        this.office = office;
    }

    /** The way to a workbook, for the foot of the page that says the same in words. */
    static Document link(String address) {
        return new Document(
                List.of(new Block.Links(List.of(new Block.Link("As a workbook, to add up and sort", address)))));
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(
                ORDERS, request -> answer(request, "orders", loft.now().map(this::orders)));
        config.routes.get(RACK, request -> answer(request, "rack", loft.now().flatMap(this::rack)));
        config.routes.get(
                PLAN, request -> answer(request, "plan", loft.now().flatMap(now -> plan(now, office.isOpen(request)))));
    }

    private List<DataTable> orders(ShopNow now) {
        return new OrdersTables(loft.figures(now))
                .of(Loft.day(now), new AskOrders(now, Loft.day(now)).status().orders());
    }

    private Optional<List<DataTable>> rack(ShopNow now) {
        return loft.access().keepsLedger()
                ? Optional.of(new RackTable(loft.figures(now)).of(new AskRack(loft.access()).holdings(false)))
                : Optional.empty();
    }

    private Optional<List<DataTable>> plan(ShopNow now, boolean money) {
        return loft.inForce(now).flatMap(Verdict::passed).map(passed -> loft.shown(now, passed)
                .tables(money));
    }

    private void answer(Context request, String name, Optional<List<DataTable>> tables) {
        if (tables.isEmpty()) {
            site.tell(
                    request,
                    "There is no such table: the files of the shop cannot be read, or there is no plan or no ledger yet.");
            return;
        }
        request.contentType(WORKBOOK)
                .header("Content-Disposition", "attachment; filename=\"" + name + ".xlsx\"")
                .result(TableBook.bytes(tables.get()));
    }
}
