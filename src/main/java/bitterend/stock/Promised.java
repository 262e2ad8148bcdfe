package bitterend.stock;

import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What was ordered of a reel that came. The event that books the reel keeps it, since the files change when the order is
 * done.
 *
 * @param order the shop's number for the order of reels; empty for none
 * @param supplier who sent it; empty when not stated
 * @param written length of the reel as it was ordered
 * @param tolerance how much shorter it may come, as a share of that
 * @param expected the day it was expected
 * @param price of the reel as it was ordered, without freight
 */
public record Promised(
        String order, String supplier, Written written, Ratio tolerance, LocalDate expected, Money price) {
    /** Of a reel that nobody ordered, or whose order was not said. */
    public static final Promised NOTHING = new Promised("", "", Written.NOTHING, Ratio.ZERO, LocalDate.MIN, Money.ZERO);

    private static final String LENGTH = "ordered ";
    private static final String SUPPLIER = "supplier ";
    private static final String TOLERANCE = "tolerance ";
    private static final String EXPECTED = "expected ";
    private static final String PRICE = "price ";

    /** The length that was ordered in whole millimetres, rounded down. */
    public Length length() {
        return written.roundedDown();
    }

    /** How much shorter the supplier may send it, rounded up. */
    public Length allowed() {
        return new Length(tolerance.timesRoundedUp(length().mm()));
    }

    /** The facts that an event keeps it by: exact, the price in the smallest coin. */
    Map<String, String> facts() {
        Map<String, String> facts = new TreeMap<>();
        if (!order.isEmpty() && written.exact().roundedDown().isPositive()) {
            facts.put(LENGTH + order, written.kept());
            facts.put(SUPPLIER + order, supplier);
            facts.put(TOLERANCE + order, tolerance.numerator() + "/" + tolerance.denominator());
            facts.put(EXPECTED + order, expected.toString());
            facts.put(PRICE + order, Long.toString(price.minor()));
        }
        return facts;
    }

    /**
     * What an event keeps of an order of reels; nothing where it was booked before events kept that.
     *
     * @throws LedgerException.Unreadable when a fact is not what it must be
     */
    static Optional<Promised> of(Event event, String order) {
        if (event.fact(LENGTH + order).isEmpty()) {
            return Optional.empty();
        }
        Written written = Written.parsePresent(event.fact(LENGTH + order))
                .value()
                .filter(length -> length.roundedDown().isPositive())
                .orElseThrow(() -> event.damaged(LENGTH + order, "length"));
        return Optional.of(new Promised(
                order,
                event.fact(SUPPLIER + order),
                written,
                tolerance(event, TOLERANCE + order),
                day(event, EXPECTED + order),
                new Money(event.number(PRICE + order))));
    }

    private static Ratio tolerance(Event event, String fact) {
        try {
            String[] parts = event.fact(fact).split("/", 2);
            Ratio ratio = new Ratio(Long.parseLong(parts[0]), Long.parseLong(parts[1]));
            if (!ratio.isNegative() && ratio.compareTo(Ratio.ONE) < 0) {
                return ratio;
            }
        } catch (IllegalArgumentException | ArithmeticException | IndexOutOfBoundsException nonsense) {
            throw event.damaged(fact, "share");
        }
        throw event.damaged(fact, "share");
    }

    private static LocalDate day(Event event, String fact) {
        try {
            return LocalDate.parse(event.fact(fact));
        } catch (DateTimeException nonsense) {
            throw event.damaged(fact, "day");
        }
    }
}
