package bitterend.exchange;

import bitterend.demand.PieceId;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.GroupedTable;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.ObjectTable;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.measure.Parsed;
import bitterend.measure.formula.Kind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Reads {@code assemblies.json} or {@code assemblies.csv}, the standard products an order line may name. */
final class ProductsJson {
    static final String NAME = "assemblies.json";
    /** The same as a table. */
    static final String TABLE_NAME = "assemblies.csv";

    private static final String FORMAT = "bitterend/assemblies/1";
    /** How many of a part an assembly takes. */
    static final Reading<Integer> COUNT = Readings.whole(1, 1000);

    private static final Reading<Kind> KIND = Readings.word(Kind.values(), Codec::word);

    /** Columns that a product may fill for its parts. */
    static final List<String> PART_COLUMNS = List.of(
            "rope",
            "substitutes",
            "length",
            "measured",
            "extension",
            "shrinkage",
            "bedding",
            "hang",
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
            "along",
            "use",
            "certificate",
            "own rope",
            "code",
            "note");

    private static final GroupedTable TABLE = new GroupedTable(
            "products",
            new CsvColumns(
                    List.of("product", "rope", "length"),
                    Stream.concat(Stream.of("name", "parameters", "hardware", "part"), PART_COLUMNS.stream())
                            .filter(column -> !List.of("rope", "length").contains(column))
                            .toList()),
            "product",
            "name",
            "line",
            "parts",
            "parameters",
            "hardware");

    private final Findings findings;

    ProductsJson(Findings findings) {
        this.findings = findings;
    }

    Products read(InputFile file) {
        Optional<Products> read = ObjectTable.isOne(file)
                ? TABLE.read(file, findings, ProductsJson::products)
                : JsonDocument.read(file, FORMAT, findings, ProductsJson::products);
        return read.orElse(new Products(List.of(), false));
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
        List<Product.Parameter> parameters = parameters(entry.object("parameters"));
        Map<String, Kind> names = new TreeMap<>(Product.OF_THE_LINE);
        parameters.forEach(each -> names.put(each.name(), each.kind()));
        Map<String, Map<String, Template>> parts = new LinkedHashMap<>();
        for (JsonObject part : entry.objects("parts")) {
            String name = part.fields().require("part", ProductsJson::partName, "");
            Map<String, Template> columns = texts(part, names);
            if (!name.isEmpty() && parts.put(name, columns) != null) {
                part.fields().error("part", "a name that no other part of the product has");
            }
            for (String required : List.of("rope", "length")) {
                part.fields().require(required, Readings::text, "?");
            }
        }
        return new Product(id, parameters, line(entry.object("line"), names), parts, hardware(entry, names));
    }

    private static List<Product.Parameter> parameters(JsonObject stated) {
        List<Product.Parameter> parameters = new ArrayList<>();
        for (String name : stated.names()) {
            JsonObject stating = stated.isObject(name) ? stated.object(name) : stated;
            String usual = stated.isObject(name)
                    ? stating.fields().text("usual").orElse("")
                    : stated.fields().text(name).orElse("");
            Kind kind = stated.isObject(name) ? stating.fields().require("is", KIND, Kind.TEXT) : Kind.of(usual);
            if (Product.OF_THE_LINE.containsKey(name)) {
                stated.fields().error(name, "another name: length and legs are those of the order line");
            }
            if (kind != Kind.TEXT && !usual.isEmpty() && kind != Kind.of(usual)) {
                stating.fields().error("usual", kind.words() + ", as it says of itself");
            }
            parameters.add(new Product.Parameter(name, kind, usual));
        }
        return parameters;
    }

    /** What tells the pieces of a part from those of the other parts and from the legs. */
    private static Parsed<String> partName(String text) {
        return PieceId.isPart(text)
                ? Parsed.of(text)
                : Parsed.refused("a name of at most 40 letters, digits and _ # + ( ) -, which starts with a letter"
                        + " and does not end in a number behind a hyphen, as the id of a leg does");
    }

    /** The texts of the main part. Its legs rest on parameters alone; its length may work on the one that is ordered. */
    private static Map<String, Template> line(JsonObject row, Map<String, Kind> names) {
        Map<String, Template> texts = texts(row, names);
        Map<String, Kind> parameters = new TreeMap<>(names);
        parameters.keySet().removeAll(Product.OF_THE_LINE.keySet());
        template(row, "legs", parameters, "");
        return texts;
    }

    /** The texts of the columns; what stands in curly brackets must be a name or a formula. */
    private static Map<String, Template> texts(JsonObject row, Map<String, Kind> names) {
        Map<String, Template> texts = new LinkedHashMap<>();
        for (String column : PART_COLUMNS) {
            if (row.fields().text(column).isPresent()) {
                texts.put(column, template(row, column, names, ""));
            }
        }
        return texts;
    }

    private static Template template(JsonObject row, String column, Map<String, Kind> names, String blank) {
        Template nothing = new Template(blank, Map.of());
        return row.fields().optional(column, text -> Template.parse(text, names), nothing);
    }

    private static List<Product.Hardware> hardware(JsonObject entry, Map<String, Kind> names) {
        List<Product.Hardware> hardware = new ArrayList<>();
        for (JsonObject item : entry.objects("hardware")) {
            item.fields().require("item", Readings::text, "?");
            Template count = template(item, "count", names, "1");
            if (!count.text().contains("{")) {
                item.fields().optional("count", COUNT, 1);
            }
            hardware.add(new Product.Hardware(template(item, "item", names, "?"), count));
        }
        return hardware;
    }
}
