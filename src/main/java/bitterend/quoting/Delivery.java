package bitterend.quoting;

import java.time.LocalDate;

/**
 * When the work of a request could be done, if it were ordered on the day of the quote.
 *
 * @param day the day on which the bench is done with it, after all work that is booked; {@link LocalDate#MAX} by arrangement
 * @param rope the day on which rope that has to be ordered is there; {@link LocalDate#MIN} where there is enough on the rack
 */
public record Delivery(LocalDate day, LocalDate rope) {
    /** No day can be said. */
    public static final Delivery BY_ARRANGEMENT = new Delivery(LocalDate.MAX, LocalDate.MIN);

    /** For the customer, with what the day takes for granted. */
    public String words() {
        if (day.equals(LocalDate.MAX)) {
            return "by arrangement";
        }
        return "made by " + day + " if it is ordered on the day of this quote, after the work that is booked"
                + (rope.equals(LocalDate.MIN) ? ", from rope that is here" : ", with rope that is here on " + rope);
    }
}
