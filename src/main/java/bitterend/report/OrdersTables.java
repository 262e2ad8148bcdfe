package bitterend.report;

import static bitterend.report.TableFigures.count;
import static bitterend.report.TableFigures.day;
import static bitterend.report.TableFigures.truth;
import static bitterend.report.TableFigures.words;

import bitterend.day.OrderStatus;
import bitterend.day.PieceStatus;
import bitterend.day.PieceStatus.State;
import bitterend.report.table.DataTable;
import bitterend.report.table.DataTable.Column;
import bitterend.report.table.Datum;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** How far every order has come, for a spreadsheet: a row for each order, and one for each piece. */
public final class OrdersTables {
    private final TableFigures figures;

    public OrdersTables(Figures figures) {
        this.figures = new TableFigures(figures);
    }

    /** As of a day. */
    public List<DataTable> of(LocalDate today, List<OrderStatus> orders) {
        return List.of(orders(today, orders), pieces(today, orders));
    }

    private static DataTable orders(LocalDate today, List<OrderStatus> orders) {
        List<Column<OrderStatus>> columns = new ArrayList<>(List.of(
                words("order", OrderStatus::order),
                words("customer", OrderStatus::customer),
                day("due", OrderStatus::due),
                truth("overdue", order -> order.isOverdue(today)),
                count("pieces", order -> order.pieces().size())));
        for (State state : State.values()) {
            columns.add(count(state.word(), order -> order.count(state)));
        }
        columns.add(count("spare", order -> order.spares().size()));
        return DataTable.of("Orders", orders, columns);
    }

    /** A piece of an order. */
    private record Ordered(OrderStatus order, PieceStatus piece) {}

    private DataTable pieces(LocalDate today, List<OrderStatus> orders) {
        List<Ordered> pieces = orders.stream()
                .flatMap(order -> order.pieces().stream().map(piece -> new Ordered(order, piece)))
                .toList();
        return DataTable.of(
                "Pieces",
                pieces,
                List.of(
                        words("piece", each -> each.piece().piece()),
                        words("order", each -> each.order().order()),
                        words("customer", each -> each.order().customer()),
                        words("state", each -> each.piece().state().word()),
                        day("cut by", each -> each.piece().cutBy()),
                        truth("late", each -> each.piece().isLate(today)),
                        words("plan", each -> each.piece().plan()),
                        day("is cut on", each -> each.piece().place().on()),
                        words("planned reel", each -> each.piece().place().reel()),
                        words("reel", each -> each.piece()
                                .reel()
                                .map(reel -> reel.id())
                                .orElse("")),
                        words("lot", each -> each.piece()
                                .reel()
                                .map(reel -> reel.lot())
                                .orElse("")),
                        measured()));
    }

    private Column<Ordered> measured() {
        Column<Ordered> lengths =
                figures.fine("measured", each -> each.piece().found().made().exact());
        return new Column<>(
                lengths.heading(),
                each -> each.piece().found().isMeasured() ? lengths.value().apply(each) : Datum.blank());
    }
}
