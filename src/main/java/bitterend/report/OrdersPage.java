package bitterend.report;

import bitterend.day.OrderStatus;
import bitterend.day.OrdersTold;
import bitterend.day.PieceStatus;
import bitterend.day.PieceStatus.State;
import bitterend.finding.NaturalOrder;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** How far every order has come. */
public final class OrdersPage {
    private final OrderWords words;

    public OrdersPage(OrderWords words) {
        this.words = words;
    }

    /** How the orders are put together. */
    public enum By {
        /** One table, what is overdue first. */
        ORDER,
        CUSTOMER,
        DUE
    }

    /** As of a day. */
    public Document of(String shop, LocalDate day, OrdersTold told, By by) {
        Writing page = new Writing();
        page.title("Orders on", day.toString(), shop);
        long overdue =
                told.orders().stream().filter(order -> order.isOverdue(day)).count();
        page.paragraph(FindingsPage.count(told.orders().size(), "order") + ", " + overdue + " overdue.");
        list(page, "Changed after cutting", words.changes(told));
        list(page, "Spare pieces", words.spares(told));
        if (!words.first(told).isEmpty() && by == By.ORDER) {
            page.heading("Orders");
        }
        grouped(told.orders(), by).forEach((heading, orders) -> {
            if (!heading.isEmpty()) {
                page.heading(heading);
            }
            page.tableApart(table(orders, day));
        });
        new ToBeCutTable(day).of(told.orders()).forEach(table -> {
            page.heading("Still to be cut");
            page.tableApart(table);
        });
        return page.document();
    }

    private static void list(Writing page, String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            page.heading(heading);
            sentences.forEach(page::paragraph);
        }
    }

    private static Map<String, List<OrderStatus>> grouped(List<OrderStatus> orders, By by) {
        return switch (by) {
            case ORDER -> Map.of("", orders);
            case CUSTOMER -> group(
                    orders, order -> order.customer().isEmpty() ? "Customer not stated" : order.customer());
            case DUE -> group(orders, order -> order.isDone() ? "Delivered" : "Due " + due(order));
        };
    }

    private static Map<String, List<OrderStatus>> group(
            List<OrderStatus> orders, Function<OrderStatus, String> heading) {
        return orders.stream().collect(Collectors.groupingBy(heading, LinkedHashMap::new, Collectors.toList()));
    }

    private static String due(OrderStatus order) {
        return order.due().equals(LocalDate.MAX) ? "any day" : order.due().toString();
    }

    private static TableRows table(List<OrderStatus> orders, LocalDate day) {
        TableRows table = new TableRows(
                Column.words("order"),
                Column.words("customer"),
                Column.words("due"),
                Column.figure("pieces"),
                Column.words("how far they are"));
        for (OrderStatus order : orders) {
            table.row(
                    order.order(),
                    order.customer(),
                    due(order) + (order.isOverdue(day) ? " overdue" : ""),
                    "" + order.pieces().size(),
                    states(order));
        }
        return table;
    }

    /** {@code 2 planned (plan 17), 1 cut}, what is furthest behind first. */
    private static String states(OrderStatus order) {
        List<String> states = new ArrayList<>();
        for (State state : State.values()) {
            long count = order.count(state);
            if (count > 0) {
                states.add(count + " " + state.word() + (state == State.PLANNED ? planned(order) : ""));
            }
        }
        if (!order.spares().isEmpty()) {
            states.add(order.spares().size() + " spare");
        }
        return String.join(", ", states);
    }

    private static String planned(OrderStatus order) {
        return order.pieces().stream()
                .filter(piece -> piece.is(State.PLANNED))
                .map(PieceStatus::plan)
                .distinct()
                .sorted(NaturalOrder.IDS)
                .collect(Collectors.joining(", ", " (plan ", ")"));
    }
}
