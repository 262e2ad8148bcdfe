package bitterend.quoting;

import java.time.LocalDate;
import java.util.List;

/**
 * What a customer asks a price for.
 *
 * @param id number of the request; the order number, when order lines are priced
 * @param customer who asks; empty when not stated
 * @param day the day of the quote
 * @param lines at least one, each name once
 * @param recipient what else is known of who asks
 * @param given what it is priced with
 */
public record QuoteRequest(
        String id, String customer, LocalDate day, List<QuoteLine> lines, Recipient recipient, Given given) {
    /** Of a customer of whom nothing is known but the name. */
    public QuoteRequest(String id, String customer, LocalDate day, List<QuoteLine> lines) {
        this(id, customer, day, lines, Recipient.UNKNOWN, Given.NOTHING);
    }

    public QuoteRequest {
        lines = List.copyOf(lines);
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("request " + id + " has no line");
        }
    }

    /** The same under another number. */
    public QuoteRequest numbered(String other) {
        return new QuoteRequest(
                other,
                customer,
                day,
                lines,
                recipient,
                new Given(given.leftOut(), given.accepted(), given.delivery(), false));
    }

    /** The same with these lines alone. */
    public QuoteRequest of(List<QuoteLine> some) {
        return new QuoteRequest(id, customer, day, some, recipient, given);
    }

    /** The same, with who accepts that minutes or prices are missing; empty for nobody. */
    public QuoteRequest acceptedBy(String name) {
        return new QuoteRequest(
                id, customer, day, lines, recipient, new Given(given.leftOut(), name, given.delivery(), given.draft()));
    }

    /** The same, with when it could be made. */
    QuoteRequest delivered(Delivery delivery) {
        return new QuoteRequest(
                id,
                customer,
                day,
                lines,
                recipient,
                new Given(given.leftOut(), given.accepted(), delivery, given.draft()));
    }

    /**
     * What a request is priced with.
     *
     * @param leftOut lines that could not be read or made
     * @param accepted who accepts that minutes or prices are missing; empty when nobody does
     * @param delivery when it could be made
     * @param draft whether nobody has given it a number yet, so that its id only stands in for one
     */
    public record Given(List<Lacking> leftOut, String accepted, Delivery delivery, boolean draft) {
        /** Every line could be read, and nobody accepted anything. */
        public static final Given NOTHING = new Given(List.of(), "", Delivery.BY_ARRANGEMENT, false);

        public Given {
            leftOut = List.copyOf(leftOut);
        }
    }
}
