package bitterend.exchange;

import bitterend.demand.EndWork;
import bitterend.exchange.form.Fields;
import bitterend.measure.Parsed;
import bitterend.measure.formula.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A product with its parameters as one order line sets them, {@code eye = 300 mm; pin = 40 mm}, or as is usual. */
final class ProductSetting {
    private final Fields row;
    private final Product product;
    private final Map<String, String> texts;
    private final Map<String, Quantity> quantities = new TreeMap<>();
    private boolean whole = true;

    /** What cannot be set so is told at the row. */
    ProductSetting(Fields row, Product product) {
        this.row = row;
        this.product = product;
        this.texts = stated();
        work("parameters");
        for (String column : List.of("legs", "length")) {
            texts.put(column, row.text(column).orElseGet(() -> usual(column)));
            work(column);
        }
    }

    /** Whether all that is worked with has a value. */
    boolean isWhole() {
        return whole;
    }

    private Map<String, String> stated() {
        Map<String, String> values = product.usual();
        for (String setting : row.text("with").orElse("").split(";")) {
            String[] sides = setting.split("=", 2);
            String name = sides[0].strip();
            if (setting.isBlank()) {
                continue;
            }
            if (sides.length < 2 || !values.containsKey(name)) {
                row.error(
                        "with",
                        "parameters of the product such as eye = 300 mm; it has: "
                                + String.join(", ", values.keySet()));
                continue;
            }
            values.put(name, sides[1].strip());
        }
        product.parameters().stream()
                .filter(each -> values.getOrDefault(each.name(), "").isEmpty())
                .forEach(each -> {
                    row.error("with", "a value for " + each.name() + ", such as " + each.example());
                    whole = false;
                });
        return values;
    }

    /** What a product says of a column of its line; one leg where it says nothing. */
    private String usual(String column) {
        Template template = product.line().get(column);
        if (template != null && !(column.equals("length") && product.worksOnTheLength())) {
            return filled("", Map.of(column, template)).getOrDefault(column, "");
        }
        return column.equals("legs") ? "1" : "";
    }

    /** Reads what is worked with: one column of the line, or all the parameters. */
    private void work(String column) {
        boolean ofTheLine = Product.OF_THE_LINE.containsKey(column);
        for (String name : product.workedWith()) {
            if (ofTheLine ? !name.equals(column) : Product.OF_THE_LINE.containsKey(name)) {
                continue;
            }
            String text = texts.getOrDefault(name, "");
            Parsed<Quantity> quantity = Quantity.of(product.kind(name), text);
            quantity.value().ifPresent(value -> quantities.put(name, value));
            whole &= quantity.value().isPresent();
            if (!ofTheLine && !text.isEmpty()) {
                quantity.refusal().ifPresent(expected -> row.error("with", "for " + name + " " + expected));
            }
        }
    }

    /**
     * The texts of a part, all worked out; without those that something missing keeps from being worked out.
     *
     * @param part the name of the part; empty for the main part
     */
    Map<String, String> filled(String part, Map<String, Template> templates) {
        Map<String, String> filled = new LinkedHashMap<>();
        templates.forEach((column, template) -> {
            boolean worked = column.equals("length") && product.worksOnTheLength();
            if (row.text(column).isEmpty() || worked || !part.isEmpty()) {
                filled(column, part, template).ifPresent(text -> filled.put(column, text));
            }
        });
        return filled;
    }

    /** Parts to pick for each assembly. */
    List<EndWork.Picked> hardware() {
        List<EndWork.Picked> hardware = new ArrayList<>();
        for (Product.Hardware each : product.hardware()) {
            Optional<String> item = filled("product", "hardware", each.item());
            filled("product", "hardware", each.count()).ifPresent(count -> {
                Parsed<Integer> read = ProductsJson.COUNT.read(count);
                read.refusal().ifPresent(expected -> row.error("product", expected + " of hardware, not " + count));
                hardware.add(new EndWork.Picked(item.orElse("?"), read.value().orElse(1)));
            });
        }
        return hardware;
    }

    private Optional<String> filled(String column, String part, Template template) {
        if (!quantities.keySet().containsAll(template.workedWith())) {
            return Optional.empty();
        }
        Parsed<String> text = template.filled(texts, quantities);
        text.refusal()
                .ifPresent(expected -> row.error(
                        column,
                        expected + (part.isEmpty() ? ", of " : ", for the " + part + " of ") + "product "
                                + product.id()));
        return text.value();
    }
}
