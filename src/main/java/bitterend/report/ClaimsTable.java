package bitterend.report;

import static bitterend.report.TableFigures.count;
import static bitterend.report.TableFigures.day;
import static bitterend.report.TableFigures.words;

import bitterend.market.Claims;
import bitterend.report.table.DataTable;
import bitterend.stock.Delivery;
import java.util.List;

/** What suppliers delivered, for a spreadsheet: a row for each reel, and one for each supplier. */
public final class ClaimsTable {
    private final TableFigures figures;

    public ClaimsTable(Figures figures) {
        this.figures = new TableFigures(figures);
    }

    public List<DataTable> of(Claims claims) {
        List<Delivery> all = claims.suppliers().stream()
                .flatMap(each -> each.deliveries().stream())
                .toList();
        return List.of(reels(all), suppliers(claims));
    }

    private DataTable reels(List<Delivery> all) {
        return DataTable.of(
                "Deliveries",
                all,
                List.of(
                        words("supplier", each -> each.promised().supplier()),
                        words("on order", each -> each.promised().order()),
                        words("reel", Delivery::reel),
                        words("rope", Delivery::rope),
                        day("expected", each -> each.promised().expected()),
                        day("came", Delivery::day),
                        count("days late", Delivery::daysLate),
                        figures.length("ordered", each -> each.promised().length()),
                        figures.length("labelled", Delivery::labelled),
                        figures.length("found", Delivery::found),
                        figures.length("short by", Delivery::shortBy),
                        figures.length("allowed", each -> each.promised().allowed()),
                        figures.length("beyond", Delivery::beyond),
                        figures.money("price", each -> each.promised().price()),
                        figures.money("paid", Delivery::paid),
                        figures.cost("claim", each -> each.paidFor(each.beyond()))));
    }

    private DataTable suppliers(Claims claims) {
        return DataTable.of(
                "Suppliers",
                claims.suppliers(),
                List.of(
                        words("supplier", Claims.OfSupplier::supplier),
                        count("reels", each -> each.deliveries().size()),
                        count("short", each -> each.shorter().size()),
                        figures.length("short by", Claims.OfSupplier::shortBy),
                        figures.length("beyond", Claims.OfSupplier::beyond),
                        figures.cost("claim", Claims.OfSupplier::claim),
                        count("late", each -> each.late().size()),
                        words("usually late", each -> ClaimsPage.late(each.usual()))));
    }
}
