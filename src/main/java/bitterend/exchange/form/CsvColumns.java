package bitterend.exchange.form;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.finding.Nearest;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The columns of a CSV file. Case, hyphens and underscores in a header do not matter; their order neither.
 *
 * @param required columns that must be there
 * @param optional columns that may be there
 */
public record CsvColumns(List<String> required, List<String> optional) {
    public CsvColumns {
        required = List.copyOf(required);
        optional = List.copyOf(optional);
    }

    /** The names of the columns as the header row gives them; every problem is told. */
    public List<String> named(String file, List<String> header, Findings findings) {
        List<String> names = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String cell : header) {
            String name = Readings.plain(cell);
            if (!required.contains(name) && !optional.contains(name)) {
                findings.add(Finding.error(
                        file,
                        "row 1",
                        cell,
                        cell,
                        "a column of this file: " + String.join(", ", all()) + Nearest.hint(name, all())));
            } else if (!seen.add(name)) {
                findings.add(Finding.error(file, "row 1", name, cell, "every column once"));
            }
            names.add(name);
        }
        for (String name : required) {
            if (!seen.contains(name)) {
                findings.add(Finding.error(file, "row 1", name, "", "a column of this name"));
            }
        }
        return names;
    }

    /** Whether every required column is there and none stands twice; columns nobody knows do not keep rows from being read. */
    boolean cover(List<String> names) {
        return names.containsAll(required) && new HashSet<>(names).size() == names.size();
    }

    private List<String> all() {
        List<String> names = new ArrayList<>(required);
        names.addAll(optional);
        return names;
    }
}
