package bitterend.exchange;

import bitterend.day.BenchHours;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonObject;
import bitterend.measure.Parsed;
import java.time.DayOfWeek;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code benchHours} and {@code benchMinutes} of {@code shop.json}: when people work, and what a cut takes of it. */
final class BenchHoursJson {
    /** Of all people at a bench together: ten of them, day and night. */
    private static final int MOST_HOURS = 240;

    private static final int MINUTES_OF_AN_HOUR = 60;
    private static final Pattern HOURS = Pattern.compile("([0-9]{1,3})(?:[.]([0-9]{1,2}))? *h(?: *([0-9]{1,2}) *min)?");
    private static final Pattern MINUTES = Pattern.compile("([0-9]{1,3}) *min");
    private static final List<DayOfWeek> WEEK =
            List.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY, DayOfWeek.FRIDAY);

    private BenchHoursJson() {}

    static BenchHours read(JsonObject shop) {
        Fields days = shop.object("benchHours").fields();
        Map<DayOfWeek, Integer> hours = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : WEEK) {
            hours.put(day, days.optional(day.name().toLowerCase(Locale.ROOT), BenchHoursJson::hours, 0));
        }
        Fields minutes = shop.object("benchMinutes").fields();
        return new BenchHours(
                hours,
                minutes.optional("cut", BenchHoursJson::minutes, BenchHours.USUAL_CUT),
                minutes.optional("fetch", BenchHoursJson::minutes, BenchHours.USUAL_FETCH));
    }

    private static Parsed<Integer> hours(String text) {
        Matcher found = HOURS.matcher(text);
        if (!found.matches() || (found.group(2) != null && found.group(3) != null)) {
            return refusedHours();
        }
        int minutes = Integer.parseInt(found.group(1)) * MINUTES_OF_AN_HOUR;
        if (found.group(2) != null) {
            int hundredths = Integer.parseInt((found.group(2) + "0").substring(0, 2));
            minutes += hundredths * MINUTES_OF_AN_HOUR / 100;
        }
        if (found.group(3) != null) {
            minutes += Integer.parseInt(found.group(3));
        }
        return minutes > MOST_HOURS * MINUTES_OF_AN_HOUR ? refusedHours() : Parsed.of(minutes);
    }

    private static Parsed<Integer> refusedHours() {
        return Parsed.refused(
                "the hours of all people at the bench together, such as 14 h, 7.5 h or 7 h 30 min; at most "
                        + MOST_HOURS + " h");
    }

    private static Parsed<Integer> minutes(String text) {
        Matcher found = MINUTES.matcher(text);
        return found.matches()
                ? Parsed.of(Integer.parseInt(found.group(1)))
                : Parsed.refused("minutes, such as 3 min; at most 999");
    }
}
