package bitterend.report.table;

import java.math.BigDecimal;
import java.time.LocalDate;

/** What stands in one cell. */
public sealed interface Datum {
    /** Words; never read as a number, a day or a formula. */
    record Text(String words) implements Datum {}

    /** A number, with as many digits behind the point as are meant. */
    record Figure(BigDecimal value) implements Datum {}

    /** A day. */
    record Day(LocalDate value) implements Datum {}

    /** Nothing. */
    static Datum blank() {
        return new Text("");
    }

    static Datum of(String words) {
        return new Text(words);
    }

    static Datum of(long count) {
        return new Figure(BigDecimal.valueOf(count));
    }

    static Datum of(boolean truth) {
        return new Text(truth ? "yes" : "no");
    }

    /** It exactly, as a CSV file holds it: {@code 12.340}, {@code 2026-03-02}. */
    default String exact() {
        if (this instanceof Figure figure) {
            return figure.value().toPlainString();
        }
        return this instanceof Day day ? day.value().toString() : ((Text) this).words();
    }
}
