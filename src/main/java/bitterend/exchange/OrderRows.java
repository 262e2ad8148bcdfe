package bitterend.exchange;

import bitterend.demand.Assembly.Membership;
import bitterend.exchange.form.Fields;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;

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
        Map<String, String> values = values(row, product);
        Map<String, String> line = filled(product.line(), values);
        List<OrderRow> rows = new ArrayList<>();
        List<String> inherited = line.entrySet().stream()
                .filter(entry -> row.text(entry.getKey()).isEmpty())
                .map(entry -> entry.getKey() + " " + entry.getValue())
                .toList();
        rows.add(new OrderRow(row.over(line), new Membership("", product.hardware(), inherited)));
        product.parts().forEach((part, columns) -> {
            Map<String, String> texts = filled(columns, values);
            List<String> taken = texts.entrySet().stream()
                    .map(entry -> entry.getKey() + " " + entry.getValue())
                    .toList();
            rows.add(new OrderRow(row.only(SHARED, texts), new Membership(part, List.of(), taken)));
        });
        return rows;
    }

    /** Parameters as the line sets them in {@code with}, {@code eye = 300 mm; pin = 40 mm}, or as is usual. */
    private static Map<String, String> values(Fields row, Product product) {
        Map<String, String> values = new LinkedHashMap<>(product.parameters());
        for (String setting : row.text("with").orElse("").split(";")) {
            String[] sides = setting.split("=", 2);
            String name = sides[0].strip();
            if (setting.isBlank()) {
                continue;
            }
            if (sides.length < 2 || !product.parameters().containsKey(name)) {
                row.error(
                        "with",
                        "parameters of the product such as eye = 300 mm; it has: "
                                + String.join(", ", product.parameters().keySet()));
                continue;
            }
            values.put(name, sides[1].strip());
        }
        values.forEach((name, value) -> {
            if (value.isEmpty()) {
                row.error("with", "a value for " + name + ", such as " + name + " = 300 mm");
            }
        });
        values.put("length", row.text("length").orElse(product.line().getOrDefault("length", "")));
        values.put("legs", row.text("legs").orElse(product.line().getOrDefault("legs", "1")));
        return values;
    }

    private static Map<String, String> filled(Map<String, String> templates, Map<String, String> values) {
        Map<String, String> filled = new LinkedHashMap<>();
        templates.forEach((column, template) -> {
            Matcher names = ProductsJson.PLACEHOLDER.matcher(template);
            filled.put(
                    column,
                    names.replaceAll(found -> Matcher.quoteReplacement(values.getOrDefault(found.group(1), ""))));
        });
        return filled;
    }
}
