package bitterend.exchange.form;

import bitterend.finding.Findings;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.function.Function;

/**
 * A table whose rows are the objects of one list, read by the reader of the JSON file that holds the same: a column for each
 * plain member, named with blanks between its words, {@code usual reel} for {@code usualReel}. A blank cell is a member
 * that is not there.
 *
 * @param list name of the list that the rows are
 * @param columns the columns
 */
public record ObjectTable(String list, CsvColumns columns) {
    private static final String ENDING = ".csv";

    /** Whether a file is a table by its name. */
    public static boolean isOne(InputFile file) {
        return file.name().endsWith(ENDING) || !file.sheets().isEmpty();
    }

    /** Reads the rows of a file as the objects of the list. */
    public <T> Optional<T> read(InputFile file, Findings findings, Function<JsonObject, T> reader) {
        CsvTable table = new CsvTable(file, columns, findings);
        if (!columns.cover(table.header())) {
            table.rows();
            return Optional.empty();
        }
        AskedMembers asked = new AskedMembers();
        ArrayNode rows = JsonNodeFactory.instance.arrayNode();
        table.rows().forEach(row -> rows.add(object(row, asked)));
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.set(list, rows);
        return Optional.of(reader.apply(new JsonObject(file.name(), "", root, findings, asked)));
    }

    private ObjectNode object(Fields row, AskedMembers asked) {
        ObjectNode node = asked.row(row.place());
        columns.all().forEach(column -> row.text(column).ifPresent(text -> node.put(member(column), text)));
        return node;
    }

    /** The name of the member that a column fills. */
    private static String member(String column) {
        StringBuilder name = new StringBuilder();
        for (String word : column.split(" ")) {
            name.append(name.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return name.toString();
    }
}
