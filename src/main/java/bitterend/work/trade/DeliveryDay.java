package bitterend.work.trade;

import bitterend.day.BenchHours;
import bitterend.demand.Piece;
import bitterend.packing.PackingProblem;
import bitterend.packing.WorkingDays;
import bitterend.quoting.Delivery;
import bitterend.quoting.LineQuote;
import bitterend.quoting.Quote;
import bitterend.quoting.RopeQuote;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The earliest day on which a request could be made: the bench does the work that is booked first, then this, in its stated
 * hours. Rope that the rack does not hold beside the booked work comes by the offers that are priced.
 */
final class DeliveryDay {
    private static final int MOST_DAYS = 366;

    private final BenchHours hours;
    private final PackingProblem book;
    private final RopeThere ropes;

    DeliveryDay(BenchHours hours, PackingProblem book) {
        this.hours = hours;
        this.book = book;
        ropes = new RopeThere(book);
    }

    /** By arrangement where the shop states no hours, where rope is not to be had, or where it would be more than a year. */
    Delivery of(Quote quote) {
        if (!hours.areStated()) {
            return Delivery.byArrangement("the shop states no hours of its bench (benchHours in shop.json)");
        }
        LocalDate rope = LocalDate.MIN;
        List<String> lacking = new ArrayList<>();
        for (RopeQuote each : quote.ropes()) {
            Optional<LocalDate> there = ropes.day(each, quote.bill());
            if (there.isEmpty()) {
                lacking.add(each.rope());
            } else if (there.get().isAfter(rope)) {
                rope = there.get();
            }
        }
        return lacking.isEmpty()
                ? on(rope, quote)
                : Delivery.byArrangement("nobody offers " + String.join(" or ", lacking)
                        + " so that it can be ordered today, and neither the rack nor what is on order holds these pieces"
                        + " beside the booked work");
    }

    private Delivery on(LocalDate rope, Quote quote) {
        WorkingDays working = new WorkingDays(book.calendar());
        long before = minutes(book.pieces());
        long own = own(quote);
        LocalDate day = working.firstFrom(book.day());
        for (int days = 0; days < MOST_DAYS; days++) {
            long there = hours.on(day);
            long first = Math.min(before, there);
            before -= first;
            own -= day.isBefore(rope) ? 0 : there - first;
            if (own <= 0 && before == 0) {
                return new Delivery(day, rope);
            }
            day = working.after(day, 1);
        }
        return Delivery.byArrangement("the bench would not be done with it within a year");
    }

    private long minutes(List<Piece> pieces) {
        return pieces.stream()
                .mapToLong(piece -> (long) piece.source().minutes() + hours.cut())
                .sum();
    }

    private long own(Quote quote) {
        long minutes = 0;
        for (LineQuote line : quote.lines()) {
            minutes += (long) line.line().minutes() * line.line().quantity()
                    + (long) hours.cut() * line.line().pieces().size()
                    + hours.fetch()
                    + quote.policy().work().setUpMinutes();
        }
        return minutes;
    }
}
