package bitterend.exchange.form;

import bitterend.finding.Findings;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A table in which several rows make one object: the rows from one that names it down to the next that does. Its first row is
 * an object of its own inside it, every further row one of a list. Cells that hold several things part them by semicolons,
 * and name and value by the last colon: {@code eye: 300 mm; pin: 20 mm}.
 *
 * @param list name of the list that the objects are
 * @param columns the columns
 * @param id the column that names an object; blank in the rows below that belong to it
 * @param name a column of the first row that the object has itself
 * @param first the member that the other columns of the first row are in
 * @param rest the list that the further rows are
 * @param pairs a column of the first row whose cell becomes an object of names and values
 * @param items a column of the first row whose cell becomes a list of objects, each a thing by its name and how many
 */
public record GroupedTable(
        String list,
        CsvColumns columns,
        String id,
        String name,
        String first,
        String rest,
        String pairs,
        String items) {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** Reads the rows of a file as the objects of the list. */
    public <T> Optional<T> read(InputFile file, Findings findings, Function<JsonObject, T> reader) {
        CsvTable table = new CsvTable(file, columns, findings);
        List<Fields> rows = table.rows();
        if (!columns.cover(table.header())) {
            return Optional.empty();
        }
        ArrayNode objects = NODES.arrayNode();
        ObjectNode object = null;
        AskedMembers asked = new AskedMembers();
        for (Fields row : rows) {
            if (row.text(id).isPresent()) {
                object = begin(row, asked);
                objects.add(object);
            } else if (object == null) {
                row.require(id, Readings::id, "?");
            } else {
                object.withArray("/" + rest).add(part(row, asked));
            }
        }
        ObjectNode root = NODES.objectNode();
        root.set(list, objects);
        return Optional.of(reader.apply(new JsonObject(file.name(), "", root, findings, asked)));
    }

    private ObjectNode begin(Fields row, AskedMembers asked) {
        ObjectNode object = asked.row(row.place());
        object.put("id", row.text(id).orElse(""));
        row.text(name).ifPresent(text -> object.put(name, text));
        ObjectNode own = part(row, asked);
        own.remove(List.of(id, name, pairs, items));
        object.set(first, own);
        ObjectNode named = asked.row(row.place());
        cell(row, pairs).forEach(each -> named.put(each.get(0), each.get(1)));
        object.set(pairs, named);
        cell(row, items).forEach(each -> object.withArray("/" + items)
                .add(item(asked.row(row.place()), each.get(0), each.get(1))));
        return object;
    }

    private ObjectNode part(Fields row, AskedMembers asked) {
        ObjectNode node = asked.row(row.place());
        columns.all().forEach(column -> row.text(column).ifPresent(text -> node.put(column, text)));
        return node;
    }

    private static ObjectNode item(ObjectNode node, String item, String count) {
        node.put("item", item);
        node.put("count", count.isEmpty() ? "1" : count);
        return node;
    }

    /** What a cell holds, each with its name and its value. */
    private static List<List<String>> cell(Fields row, String column) {
        return row.text(column).stream()
                .flatMap(text -> List.of(text.split(";")).stream())
                .map(String::strip)
                .filter(text -> !text.isEmpty())
                .map(GroupedTable::nameAndValue)
                .toList();
    }

    private static List<String> nameAndValue(String text) {
        int colon = text.lastIndexOf(':');
        return colon < 0
                ? List.of(text, "")
                : List.of(
                        text.substring(0, colon).strip(),
                        text.substring(colon + 1).strip());
    }
}
