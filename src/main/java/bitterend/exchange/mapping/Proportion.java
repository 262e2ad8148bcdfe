package bitterend.exchange.mapping;

import bitterend.exchange.form.OwnSheet;
import bitterend.exchange.form.Readings;
import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Doubts the unit that was answered for a column of lengths last time, where the middle one of its figures is more than a
 * hundred times, or less than a hundredth, of the middle one of the lengths that the shop knows: then it is asked again.
 */
final class Proportion {
    /** Of fewer lengths of the shop nothing follows. */
    private static final int FEWEST = 5;

    private static final long TIMES = 100;
    private static final String LENGTH = "length";

    private final OwnSheet sheet;
    private final int head;
    private final List<Length> known;
    private final Answers answers;

    /** @param known lengths of the shop of the kind that the sheet is about */
    Proportion(OwnSheet sheet, int head, List<Length> known, Answers answers) {
        this.sheet = sheet;
        this.head = head;
        this.known = known;
        this.answers = answers;
    }

    void check(List<Column> columns, SheetForm.Form form) {
        for (Column column : columns) {
            String question = CellWords.unitOf(column);
            Optional<String> unit = answers.kept(question);
            if (column.member().equals(LENGTH) && unit.isPresent()) {
                List<Length> lengths = lengths(column, form, unit.get());
                if (known.size() >= FEWEST && !lengths.isEmpty() && isOut(middle(lengths), middle(known))) {
                    answers.doubt(
                            question,
                            "Last time it was " + unit.get() + ", which would make them out of proportion to the "
                                    + known.size() + " lengths that the shop knows.");
                }
            }
        }
    }

    private List<Length> lengths(Column column, SheetForm.Form form, String unit) {
        List<Length> lengths = new ArrayList<>();
        for (int row = head + 1; row < sheet.rows().size(); row++) {
            String text = sheet.cell(row, column.at());
            String plain = sheet.isExact(row, column.at())
                    ? text
                    : form.local().figures(text).value().orElse("");
            if (CellWords.isBare(plain)) {
                Readings.wantedLength(plain + " " + unit).value().ifPresent(lengths::add);
            }
        }
        return lengths;
    }

    /** Of an even number the upper one of the two in the middle. */
    private static Length middle(List<Length> lengths) {
        return lengths.stream().sorted().toList().get(lengths.size() / 2);
    }

    private static boolean isOut(Length one, Length other) {
        return one.isLongerThan(other.times(TIMES)) || other.isLongerThan(one.times(TIMES));
    }
}
