package bitterend.exchange;

import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.ObjectTable;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Rows of a JSON file or of a table in its place, such as those of ropes or thimbles, that cannot be used as they stand. They stop nobody but the orders
 * that need them: those are left out, and the row is told before them. What is wrong with the file as a whole still stops.
 */
final class LeftOutRows {
    private static final Pattern ROW = Pattern.compile("(/[A-Za-z]+/[0-9]+|(?:sheet .+, )?row [0-9]+)(/.*)?");

    /** Errors of rows that have an id, by that id. */
    private final Map<String, List<Finding>> rows = new LinkedHashMap<>();

    private final List<Finding> others = new ArrayList<>();

    private LeftOutRows() {}

    /**
     * Takes the findings of a file apart.
     *
     * @param file the file
     * @param format its format
     * @param lists the lists whose objects have an id
     * @param table the form of the file where it is a table
     * @param ofFile everything that was found in the file, and nothing else
     */
    static LeftOutRows of(InputFile file, String format, List<String> lists, ObjectTable table, Findings ofFile) {
        LeftOutRows left = new LeftOutRows();
        Map<String, String> ids = ofFile.hasErrors() ? ids(file, format, lists, table) : Map.of();
        for (Finding finding : ofFile.sorted()) {
            Matcher row = ROW.matcher(finding.place());
            String id = finding.isError() && row.matches() ? ids.getOrDefault(row.group(1), "") : "";
            if (id.isEmpty()) {
                left.others.add(finding);
            } else {
                left.rows.computeIfAbsent(id, any -> new ArrayList<>()).add(finding);
            }
        }
        return left;
    }

    private static Map<String, String> ids(InputFile file, String format, List<String> lists, ObjectTable table) {
        Map<String, String> ids = new TreeMap<>();
        Function<JsonObject, Map<String, String>> reader = document -> {
            lists.forEach(list -> document.objects(list).forEach(row -> row.fields()
                    .text("id")
                    .ifPresent(id -> ids.put(row.fields().place(), id))));
            return ids;
        };
        if (ObjectTable.isOne(file)) {
            table.read(file, new Findings(), reader);
        } else {
            JsonDocument.readPart(file, format, new Findings(), reader);
        }
        return ids;
    }

    /** Ids of the rows that cannot be used. */
    Set<String> ids() {
        return new TreeSet<>(rows.keySet());
    }

    /** What else was found in the file. */
    List<Finding> others() {
        return List.copyOf(others);
    }

    /** The errors of rows as they were found. */
    List<Finding> errors() {
        return rows.values().stream().flatMap(List::stream).toList();
    }

    /**
     * What is told of rows: that they are left out, or only a warning where no order needs them.
     *
     * @param needed whether an order was left out for want of the row of this id
     */
    List<Finding> told(Predicate<String> needed) {
        List<Finding> told = new ArrayList<>();
        rows.forEach((id, errors) -> errors.forEach(error -> told.add(
                needed.test(id)
                        ? error.leavingOut()
                        : Finding.warning(
                                error.file(), error.place(), error.field(), error.found(), error.expected()))));
        return told;
    }
}
