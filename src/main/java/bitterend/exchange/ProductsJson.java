package bitterend.exchange;

import bitterend.demand.EndWork;
import bitterend.demand.PieceId;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.measure.Parsed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code assemblies.json}, the standard products an order line may name. */
final class ProductsJson {
    static final String NAME = "assemblies.json";
    private static final String FORMAT = "bitterend/assemblies/1";
    static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)\\}");
    private static final Set<String> OF_THE_LINE = Set.of("length", "legs");

    /** Columns that a product may fill for its parts. */
    static final List<String> PART_COLUMNS = List.of(
            "rope",
            "substitutes",
            "length",
            "measured",
            "extension",
            "shrinkage",
            "bedding",
            "end a",
            "end b",
            "legs",
            "match",
            "spare",
            "sample",
            "tolerance",
            "eye tolerance",
            "set tolerance",
            "marks",
            "use",
            "certificate",
            "code");

    private final Findings findings;

    ProductsJson(Findings findings) {
        this.findings = findings;
    }

    Products read(InputFile file) {
        return JsonDocument.read(file, FORMAT, findings, ProductsJson::products).orElse(new Products(List.of(), false));
    }

    private static Products products(JsonObject document) {
        document.mayHave("note");
        Map<String, String> ids = new HashMap<>();
        List<Product> products = new ArrayList<>();
        for (JsonObject entry : document.objects("products")) {
            String id = entry.fields().require("id", Readings::id, "?");
            entry.fields().once("id", id, ids);
            products.add(product(id, entry));
        }
        return new Products(products, true);
    }

    private static Product product(String id, JsonObject entry) {
        entry.mayHave("name", "note");
        Map<String, String> parameters = new LinkedHashMap<>();
        JsonObject stated = entry.object("parameters");
        for (String name : stated.names()) {
            parameters.put(name, stated.fields().text(name).orElse(""));
        }
        Set<String> known = new TreeSet<>(parameters.keySet());
        known.addAll(OF_THE_LINE);
        Map<String, Map<String, String>> parts = new LinkedHashMap<>();
        for (JsonObject part : entry.objects("parts")) {
            String name = part.fields().require("part", ProductsJson::partName, "");
            Map<String, String> columns = texts(part, known);
            if (!name.isEmpty() && parts.put(name, columns) != null) {
                part.fields().error("part", "a name that no other part of the product has");
            }
            for (String required : List.of("rope", "length")) {
                part.fields().require(required, Readings::text, "?");
            }
        }
        return new Product(id, parameters, texts(entry.object("line"), known), parts, hardware(entry));
    }

    /** What tells the pieces of a part from those of the other parts and from the legs. */
    private static Parsed<String> partName(String text) {
        return PieceId.isPart(text)
                ? Parsed.of(text)
                : Parsed.refused("a name of at most 40 letters, digits and _ # + ( ) -, which starts with a letter"
                        + " and does not end in a number behind a hyphen, as the id of a leg does");
    }

    /** The texts of the columns; every placeholder must be a parameter. */
    private static Map<String, String> texts(JsonObject row, Set<String> known) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String column : PART_COLUMNS) {
            row.fields().text(column).ifPresent(text -> {
                texts.put(column, text);
                Matcher names = PLACEHOLDER.matcher(text);
                while (names.find()) {
                    if (!known.contains(names.group(1))) {
                        row.fields().error(column, "names of parameters only: " + String.join(", ", known));
                    }
                }
            });
        }
        return texts;
    }

    private static List<EndWork.Picked> hardware(JsonObject entry) {
        List<EndWork.Picked> hardware = new ArrayList<>();
        for (JsonObject item : entry.objects("hardware")) {
            hardware.add(new EndWork.Picked(
                    item.fields().require("item", Readings::text, "?"),
                    item.fields().optional("count", Readings.whole(1, 1000), 1)));
        }
        return hardware;
    }
}
