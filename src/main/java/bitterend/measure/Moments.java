package bitterend.measure;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/** Moments as a sentence says them: by the clock on the wall of whoever reads it, as the tables do. */
public final class Moments {
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    private Moments() {}

    /** {@code 2026-03-02 14:05}. */
    public static String text(Instant moment) {
        return text(moment, ZoneId.systemDefault());
    }

    /** The same by the clock of a zone. */
    public static String text(Instant moment, ZoneId zone) {
        return MOMENT.format(moment.atZone(zone));
    }

    /** The day on which it was. */
    public static LocalDate day(Instant moment) {
        return LocalDate.ofInstant(moment, ZoneId.systemDefault());
    }
}
