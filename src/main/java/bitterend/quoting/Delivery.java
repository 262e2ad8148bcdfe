package bitterend.quoting;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When the work of a request could be done, if it were ordered on the day of the quote.
 *
 * @param day the day on which the bench is done with it, after all work that is booked; {@link LocalDate#MAX} by arrangement
 * @param rope the day on which rope that has to be ordered is there; {@link LocalDate#MIN} where there is enough on the rack
 * @param why for the file, why no day can be said, in a sentence without a full stop; empty where one is
 */
public record Delivery(LocalDate day, LocalDate rope, String why) {
    /** Nobody worked out a day. */
    public static final Delivery BY_ARRANGEMENT = byArrangement("");

    private static final Pattern MADE_BY = Pattern.compile("made by ([0-9]{4}-[0-9]{2}-[0-9]{2})[ ,].*");

    /** A day that could be worked out. */
    public Delivery(LocalDate day, LocalDate rope) {
        this(day, rope, "");
    }

    /** No day can be said. */
    public static Delivery byArrangement(String why) {
        return new Delivery(LocalDate.MAX, LocalDate.MIN, why);
    }

    /** The day that {@link #words} named; nothing where they name none. */
    public static Optional<LocalDate> dayOf(String words) {
        Matcher made = MADE_BY.matcher(words);
        try {
            return made.matches() ? Optional.of(LocalDate.parse(made.group(1))) : Optional.empty();
        } catch (DateTimeParseException nonsense) {
            return Optional.empty();
        }
    }

    /**
     * For the customer, with what the day takes for granted.
     *
     * @param asked the lines by the day by which they are asked for
     */
    public String words(SortedMap<LocalDate, List<String>> asked) {
        if (day.equals(LocalDate.MAX)) {
            return "by arrangement";
        }
        return "made by " + day + against(asked)
                + " if it is ordered on the day of this quote, after the work that is booked"
                + (rope.equals(LocalDate.MIN) ? ", from rope that is here" : ", with rope that is here on " + rope);
    }

    private String against(SortedMap<LocalDate, List<String>> asked) {
        if (asked.isEmpty()) {
            return "";
        }
        SortedMap<LocalDate, List<String>> late = asked.headMap(day);
        if (late.isEmpty()) {
            return ", by the day asked for,";
        }
        return late.size() == asked.size()
                ? ", later than asked for,"
                : ", later than asked for line "
                        + String.join(
                                " and line ",
                                late.values().stream().flatMap(List::stream).toList())
                        + ",";
    }
}
