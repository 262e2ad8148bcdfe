package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.stock.StockValue;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The value curves of a study, each length worked out once: packings ask for the same lengths over and over. */
final class Curves {
    /** Longer coils are worked out every time; a table takes 8 bytes a millimetre. */
    private static final int LONGEST_MM = 1_100_000;

    private final StockValue rack;
    private final Map<Offer, StockValue> offers = new ConcurrentHashMap<>();

    Curves(Study study) {
        Length longest = Length.ZERO;
        for (Option option : study.options()) {
            longest = Length.max(longest, option.longest());
            option.offers()
                    .forEach(offer -> offers.computeIfAbsent(
                            offer,
                            each -> new Table(
                                    new PaidValue(study.value(), each.paid(), each.usable(), false), each.usable())));
        }
        rack = new Table(study.value(), longest);
    }

    /** The worth of a coil on the rack. */
    StockValue rack() {
        return rack;
    }

    /** The worth of a reel of an offer of the study. */
    StockValue of(Offer offer) {
        StockValue value = offers.get(offer);
        if (value == null) {
            throw new IllegalArgumentException("no offer of the study: " + offer);
        }
        return value;
    }

    /** A curve with the lengths asked for so far. Threads that fill a place at once fill in the same. */
    private static final class Table implements StockValue {
        private final StockValue curve;
        /** One more than the value; 0 where it is not worked out. */
        private final long[] known;

        Table(StockValue curve, Length longest) {
            this.curve = curve;
            known = new long[(int) Math.min(LONGEST_MM, longest.mm()) + 1];
        }

        @Override
        public Cost of(Length length) {
            long mm = length.mm();
            if (mm < 0 || mm >= known.length) {
                return curve.of(length);
            }
            long there = known[(int) mm];
            if (there == 0) {
                there = curve.of(length).millis() + 1;
                known[(int) mm] = there;
            }
            return new Cost(there - 1);
        }
    }
}
