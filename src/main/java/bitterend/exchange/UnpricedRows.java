package bitterend.exchange;

import bitterend.exchange.form.Fields;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.quoting.Lacking;
import java.util.List;
import java.util.Map;

/** Rows of a request that could not be read or made, as lines that have no price. */
final class UnpricedRows {
    private UnpricedRows() {}

    /**
     * Each row as it was written, with what is wrong with it.
     *
     * @param first where the name of each line was met first
     */
    static List<Lacking> lacking(List<Fields> rows, Map<String, String> first, Findings findings) {
        List<Finding> errors =
                findings.sorted().stream().filter(Finding::isError).toList();
        return rows.stream()
                .map(row -> new Lacking(
                        new Lacking.Asked(
                                text(row, "line"),
                                text(row, "note"),
                                text(row, "length"),
                                text(row, "rope"),
                                !row.place().equals(first.getOrDefault(text(row, "line"), row.place()))),
                        "it cannot be priced as it is written",
                        of(row, errors)))
                .toList();
    }

    private static List<Finding> of(Fields row, List<Finding> errors) {
        List<Finding> own =
                errors.stream().filter(each -> each.place().equals(row.place())).toList();
        return own.isEmpty()
                ? List.of(Finding.error(row.file(), row.place(), "", "", "a line that can be read and made"))
                : own;
    }

    private static String text(Fields row, String column) {
        return row.text(column).orElse("");
    }
}
