package bitterend.quoting;

import bitterend.measure.Money;
import java.time.LocalDate;
import java.util.List;

/**
 * A price for a request, with all that stands behind it.
 *
 * @param request what was asked for
 * @param policy how the price was made
 * @param lines the price of each line, in the order of the request
 * @param ropes what each rope draws and costs, by id; a customer's own rope is left out
 * @param neighbours cheaper changes within the customer's leeway
 */
public record Quote(
        QuoteRequest request,
        QuotePolicy policy,
        List<LineQuote> lines,
        List<RopeQuote> ropes,
        List<Neighbour> neighbours) {
    public Quote {
        lines = List.copyOf(lines);
        ropes = List.copyOf(ropes);
        neighbours = List.copyOf(neighbours);
    }

    /** All lines together, before tax. */
    public Money total() {
        return lines.stream().map(line -> line.buildUp().price()).reduce(Money.ZERO, Money::plus);
    }

    /** The last day it stands. */
    public LocalDate validUntil() {
        return request.day().plusDays(policy.validDays());
    }
}
