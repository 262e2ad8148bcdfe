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
 */
public record QuoteRequest(String id, String customer, LocalDate day, List<QuoteLine> lines, Recipient recipient) {
    /** Of a customer of whom nothing is known but the name. */
    public QuoteRequest(String id, String customer, LocalDate day, List<QuoteLine> lines) {
        this(id, customer, day, lines, Recipient.UNKNOWN);
    }

    public QuoteRequest {
        lines = List.copyOf(lines);
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("request " + id + " has no line");
        }
    }

    /** The same under another number. */
    public QuoteRequest numbered(String other) {
        return new QuoteRequest(other, customer, day, lines, recipient);
    }
}
