package bitterend.exchange.mapping;

import bitterend.exchange.form.OwnSheet;
import java.util.List;
import java.util.Optional;

/** Finds the row of a sheet that names its columns, whatever is above it. */
final class HeadingRow {
    /** A title, a date and a few blank rows may be above. */
    private static final int MOST_ABOVE = 20;

    private static final int SURE = 60;

    private HeadingRow() {}

    /** The row with most names that are known, at least two; the first of equals. */
    static Optional<Integer> of(OwnSheet sheet) {
        int best = -1;
        long most = 1;
        for (int row = 0; row < Math.min(MOST_ABOVE, sheet.rows().size()); row++) {
            long known = sheet.texts(row).stream().filter(HeadingRow::isKnown).count();
            if (known > most) {
                best = row;
                most = known;
            }
        }
        return best < 0 ? Optional.empty() : Optional.of(best);
    }

    private static boolean isKnown(String cell) {
        if (cell.isBlank() || cell.strip().length() > 40) {
            return false;
        }
        Heading heading = Heading.of(cell);
        return TradeWords.builtIn().headings().stream().anyMatch(member -> heading.fits(member) >= SURE);
    }

    /** Which file of a shop the sheet is about: the one whose members its headings name best. */
    static Optional<Table> table(List<String> headings) {
        Table best = null;
        int most = 0;
        boolean twice = false;
        for (Table table : Table.values()) {
            int sum = 0;
            for (TradeWords.Heading member : TradeWords.builtIn().headings()) {
                if (member.tables().contains(table.word())) {
                    int fit = headings.stream()
                            .filter(cell -> !cell.isBlank())
                            .mapToInt(cell -> Heading.of(cell).fits(member))
                            .max()
                            .orElse(0);
                    // what other files have, too, says little of which it is
                    sum += fit * 6 / (member.tables().size() * member.tables().size());
                }
            }
            twice = sum == most || (twice && sum < most);
            if (sum > most) {
                best = table;
                most = sum;
            }
        }
        return twice ? Optional.empty() : Optional.ofNullable(best);
    }
}
