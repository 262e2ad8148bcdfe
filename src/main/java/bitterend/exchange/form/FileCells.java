package bitterend.exchange.form;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Cells of a table brought into the form of the files, by what their column holds and how its place types that. */
final class FileCells {
    private static final Set<String> DAYS =
            Set.of("day", "due", "expected", "placed", "received", "use by", "valid until");
    /** Columns whose commas are commas. */
    private static final Set<String> WORDS = Set.of(
            "accept",
            "address",
            "certificate number",
            "colour",
            "contact",
            "customer",
            "for order",
            "id",
            "line",
            "lot",
            "name",
            "note",
            "number",
            "offer",
            "on order",
            "order",
            "own rope",
            "owner",
            "part",
            "piece",
            "place",
            "product",
            "reel",
            "rope",
            "set",
            "source",
            "splicer",
            "substitutes",
            "supplier",
            "tracer",
            "who");

    private final InputFile file;
    private final Findings findings;
    private final List<Finding> doubtful = new ArrayList<>();
    private boolean commas;

    FileCells(InputFile file, Findings findings) {
        this.file = file;
        this.findings = findings;
    }

    /**
     * A cell in the form of the files; what cannot be brought into it stays as it is and is refused by its reader.
     *
     * @param number whether it is a number of a workbook, whose point is a decimal one
     */
    String cell(String place, String column, String text, boolean number) {
        if (file.form().tag().isEmpty() || text.isBlank() || WORDS.contains(column)) {
            return text;
        }
        if (DAYS.contains(column)) {
            return file.form().day(text.strip()).value().orElse(text);
        }
        String figure = number ? "" : file.form().twoMeanings(text);
        if (!figure.isEmpty()) {
            doubtful.add(Finding.warning(
                    file.name(),
                    place,
                    column,
                    text,
                    "a decimal comma as in other rows, or no point between thousands: " + figure
                            + " is read with a decimal point"));
        }
        String plain = file.form().decimals(text);
        commas |= !plain.equals(text);
        return plain;
    }

    /** Tells of points that could part thousands, in a table that has decimal commas: where points alone are, they are decimal. */
    void tellDoubtful() {
        if (commas) {
            doubtful.forEach(findings::add);
        }
    }
}
