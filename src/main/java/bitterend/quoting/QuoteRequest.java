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
 */
public record QuoteRequest(String id, String customer, LocalDate day, List<QuoteLine> lines) {
    public QuoteRequest {
        lines = List.copyOf(lines);
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("request " + id + " has no line");
        }
    }
}
