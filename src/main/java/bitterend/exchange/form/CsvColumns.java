package bitterend.exchange.form;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.finding.Nearest;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The columns of a CSV file. Case, hyphens and underscores in a header do not matter; their order neither.
 *
 * @param required columns that must be there
 * @param optional columns that may be there
 */
public record CsvColumns(List<String> required, List<String> optional) {
    private static final Pattern WITH_UNIT = Pattern.compile("(.+?)\\s*[(\\[](.+)[)\\]]");

    public CsvColumns {
        required = List.copyOf(required);
        optional = List.copyOf(optional);
    }

    /**
     * The name of a column as a header row gives it: {@code Length (m)} is the column length, with the unit of its bare numbers
     * behind it.
     *
     * @param name the plain name
     * @param unit what stands in brackets behind it; empty for nothing
     */
    record Heading(String name, String unit) {}

    /** A cell of a header row; brackets belong to the name unless what is before them is a column. */
    Heading heading(String cell) {
        Matcher brackets = WITH_UNIT.matcher(cell.strip());
        if (brackets.matches()) {
            String name = Readings.plain(brackets.group(1));
            if (isKnown(name)) {
                return new Heading(name, brackets.group(2).strip());
            }
        }
        return new Heading(Readings.plain(cell), "");
    }

    private boolean isKnown(String name) {
        return required.contains(name) || optional.contains(name);
    }

    /** Whether a row can be the header: it names every column that must be there, and none twice. */
    boolean head(List<String> cells) {
        return cover(cells.stream()
                .map(cell -> heading(cell).name())
                .filter(name -> !name.isEmpty())
                .toList());
    }

    /** The names of the columns as the header row gives them; every problem is told. */
    List<String> named(String file, String place, List<String> header, Findings findings) {
        List<String> names = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String cell : header) {
            String name = heading(cell).name();
            if (!isKnown(name)) {
                findings.add(Finding.error(
                        file,
                        place,
                        cell,
                        cell,
                        "a column of this file: " + String.join(", ", all()) + Nearest.hint(name, all())));
            } else if (!seen.add(name)) {
                findings.add(Finding.error(file, place, name, cell, "every column once"));
            }
            names.add(name);
        }
        for (String name : required) {
            if (!seen.contains(name)) {
                findings.add(Finding.error(file, place, name, "", "a column of this name"));
            }
        }
        return names;
    }

    /** Whether every required column is there and none stands twice; columns nobody knows do not keep rows from being read. */
    boolean cover(List<String> names) {
        return names.containsAll(required) && new HashSet<>(names).size() == names.size();
    }

    /** Every column, those first that must be there. */
    public List<String> all() {
        List<String> names = new ArrayList<>(required);
        names.addAll(optional);
        return names;
    }
}
