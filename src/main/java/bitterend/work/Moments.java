package bitterend.work;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/** Moments as they are told. */
final class Moments {
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'").withZone(ZoneOffset.UTC);

    private Moments() {}

    static String text(Instant moment) {
        return MOMENT.format(moment);
    }
}
