package bitterend.work.trade;

import bitterend.day.BenchHours;
import bitterend.demand.Piece;
import bitterend.market.Bill;
import bitterend.measure.Length;
import bitterend.packing.PackingProblem;
import bitterend.packing.WorkingDays;
import bitterend.quoting.Delivery;
import bitterend.quoting.LineQuote;
import bitterend.quoting.Quote;
import bitterend.quoting.RopeQuote;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;

/**
 * The earliest day on which a request could be made: the bench does the work that is booked first, then this, in its stated
 * hours. Rope that the rack does not hold beside the booked work comes by the offers that are priced.
 */
final class DeliveryDay {
    private static final int MOST_DAYS = 366;

    private final BenchHours hours;
    private final PackingProblem book;

    DeliveryDay(BenchHours hours, PackingProblem book) {
        this.hours = hours;
        this.book = book;
    }

    /** By arrangement where the shop states no hours, where rope is not offered, or where it would be more than a year. */
    Delivery of(Quote quote) {
        LocalDate rope = LocalDate.MIN;
        for (RopeQuote each : quote.ropes()) {
            if (!isOnTheRack(each)) {
                OptionalInt lead = lead(quote.bill(), each.rope());
                if (lead.isEmpty()) {
                    return Delivery.BY_ARRANGEMENT;
                }
                LocalDate there = book.day().plusDays(lead.getAsInt());
                rope = there.isAfter(rope) ? there : rope;
            }
        }
        return hours.areStated() ? on(rope, quote) : Delivery.BY_ARRANGEMENT;
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
        return Delivery.BY_ARRANGEMENT;
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

    /** Whether the rack holds it beside the booked work; joints and flaws are left to the plan. */
    private boolean isOnTheRack(RopeQuote rope) {
        List<Reel> reels = book.reels().stream()
                .filter(reel -> reel.rope().equals(rope.rope())
                        && !reel.custody().isCustomersOwn()
                        && !book.isComing(reel.id()))
                .toList();
        Length there = reels.stream().map(Reel::length).reduce(Length.ZERO, Length::plus);
        Length booked = book.pieces().stream()
                .filter(piece ->
                        !piece.ownRope() && piece.choices().get(0).rope().equals(rope.rope()))
                .map(Piece::cut)
                .reduce(Length.ZERO, Length::plus);
        Length longest = rope.shares().problem().pieces().stream()
                .map(Piece::cut)
                .max(Length::compareTo)
                .orElse(Length.ZERO);
        boolean held = reels.stream().anyMatch(reel -> !longest.isLongerThan(reel.length()));
        return held && !rope.book().drawn().plus(booked).isLongerThan(there);
    }

    private static OptionalInt lead(Bill bill, String rope) {
        return bill.lines().stream()
                .filter(line -> line.offer().rope().equals(rope))
                .mapToInt(line -> line.offer().terms().lead().countedOn())
                .max();
    }
}
