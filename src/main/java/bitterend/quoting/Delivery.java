package bitterend.quoting;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When the work of a request could be done, if it were ordered on the day of the quote.
 *
 * @param day the day on which the bench is done with it, after all work that is booked; {@link LocalDate#MAX} by arrangement
 * @param rope the day on which rope that has to be ordered is there; {@link LocalDate#MIN} where there is enough on the rack
 */
public record Delivery(LocalDate day, LocalDate rope) {
    /** No day can be said. */
    public static final Delivery BY_ARRANGEMENT = new Delivery(LocalDate.MAX, LocalDate.MIN);

    private static final Pattern MADE_BY = Pattern.compile("made by ([0-9]{4}-[0-9]{2}-[0-9]{2}) .*");

    /** The day that {@link #words} named; nothing where they name none. */
    public static Optional<LocalDate> dayOf(String words) {
        Matcher made = MADE_BY.matcher(words);
        try {
            return made.matches() ? Optional.of(LocalDate.parse(made.group(1))) : Optional.empty();
        } catch (DateTimeParseException nonsense) {
            return Optional.empty();
        }
    }

    /** For the customer, with what the day takes for granted. */
    public String words() {
        if (day.equals(LocalDate.MAX)) {
            return "by arrangement";
        }
        return "made by " + day + " if it is ordered on the day of this quote, after the work that is booked"
                + (rope.equals(LocalDate.MIN) ? ", from rope that is here" : ", with rope that is here on " + rope);
    }
}
