package bitterend.buying;

import bitterend.market.Offer;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilValue;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The value curves of a study. Of a typed one each length is worked out once: packings ask for the same over and over. */
final class Curves {
    private final RackWorth worth;
    private final Length longest;
    private final Map<StockValue, OfRack> racks = new ConcurrentHashMap<>();

    Curves(Study study) {
        worth = study.worth();
        longest = study.options().stream().map(Option::longest).reduce(Length.ZERO, Length::max);
    }

    /** What coils and reels are worth on a rack of so many metres of coils. */
    OfRack on(Length coils) {
        return racks.computeIfAbsent(worth.on(coils), curve -> new OfRack(curve, longest));
    }

    /** The curves of one kind of rack. */
    static final class OfRack {
        private final StockValue rack;
        private final Map<Offer, StockValue> offers = new ConcurrentHashMap<>();

        private OfRack(StockValue curve, Length longest) {
            rack = curve instanceof CoilValue ? curve : new Table(curve, longest);
        }

        /** The worth of a coil on the rack. */
        StockValue rack() {
            return rack;
        }

        /** The worth of a reel of an offer. */
        StockValue of(Offer offer) {
            return offers.computeIfAbsent(offer, each -> {
                PaidValue paid = new PaidValue(rack, each.paid(), each.usable(), false);
                return rack instanceof CoilValue ? paid : new Table(paid, each.usable());
            });
        }
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
