package bitterend.exchange;

import bitterend.demand.Assembly.Membership;
import bitterend.exchange.form.Fields;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Fills the rows of order lines from the standard products they name. */
final class OrderRows {
    /** What a further part of a product shares with its line. */
    private static final Set<String> SHARED = Set.of(
            "order",
            "line",
            "customer",
            "product",
            "quantity",
            "due",
            "priority",
            "finishing",
            "certificate",
            "own rope",
            "use",
            "code",
            "accept");

    private final Products products;

    OrderRows(Products products) {
        this.products = products;
    }

    /**
     * One part of an order line.
     *
     * @param fields its columns, filled
     * @param membership what it is a part of
     */
    record OrderRow(Fields fields, Membership membership) {}

    /** The parts of a line, the main one first; what cannot be filled is told. */
    List<OrderRow> filled(Fields row) {
        Optional<String> name = row.text("product");
        Optional<Product> product = name.flatMap(products::find);
        if (product.isEmpty()) {
            if (name.isPresent() && products.known()) {
                row.error("product", "a product of " + ProductsJson.NAME);
            }
            row.text("with").ifPresent(text -> row.error("with", "nothing, without a product that takes parameters"));
            return List.of(new OrderRow(row, Membership.ALONE));
        }
        return filled(row, product.get());
    }

    private static List<OrderRow> filled(Fields row, Product product) {
        ProductSetting setting = new ProductSetting(row, product);
        Map<String, String> line = setting.filled("", product.line());
        List<OrderRow> rows = new ArrayList<>();
        List<String> inherited = line.entrySet().stream()
                .map(entry -> entry.getKey() + " " + entry.getValue() + ordered(entry.getKey(), row))
                .toList();
        Fields main = row.over(line);
        if (product.worksOnTheLength() && line.containsKey("length")) {
            main = main.with("length", line.get("length"));
        }
        Fields shared = main;
        rows.add(new OrderRow(main, new Membership("", setting.hardware(), inherited)));
        if (setting.isWhole()) {
            product.parts().forEach((part, columns) -> {
                Map<String, String> texts = setting.filled(part, columns);
                List<String> taken = texts.entrySet().stream()
                        .map(entry -> entry.getKey() + " " + entry.getValue())
                        .toList();
                rows.add(new OrderRow(shared.only(SHARED, own(texts)), new Membership(part, List.of(), taken)));
            });
        }
        return rows;
    }

    /** What the row itself says of a column that the product works on. */
    private static String ordered(String column, Fields row) {
        return row.text(column).map(text -> ", of the " + text + " ordered").orElse("");
    }

    /** What a part says for itself; "none" is a certificate that it needs not have though its line does. */
    private static Map<String, String> own(Map<String, String> texts) {
        Map<String, String> own = new LinkedHashMap<>(texts);
        own.computeIfPresent("certificate", (column, text) -> text.equals("none") ? "" : text);
        return own;
    }
}
