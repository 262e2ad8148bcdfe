package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilValue;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** What coils are worth on a rack that changes from week to week. */
public interface RackWorth {
    /** The curve of a morning on which so many metres of coils are on the rack. */
    StockValue on(Length coils);

    /** A whole rack, coil by coil from the shortest, each on a rack of those counted before it. */
    default Cost of(Collection<Length> coils) {
        Cost worth = Cost.ZERO;
        Length before = Length.ZERO;
        for (Length coil : coils.stream().sorted(Comparator.naturalOrder()).toList()) {
            worth = worth.plus(on(before).of(coil));
            before = before.plus(coil);
        }
        return worth;
    }

    /** One curve, whatever is on the rack. */
    static RackWorth always(StockValue value) {
        return coils -> value;
    }

    /** One curve, but never more than the price of new rope. */
    static RackWorth always(StockValue value, UnitPrice cheapest) {
        return always(new CappedValue(value, cheapest));
    }

    /** The coil curve. It is made once for each of eight classes of metres, counted in usual reels. */
    static RackWorth of(CoilValue value) {
        long[] halfReels = {0, 1, 2, 3, 4, 6, 9, 14};
        List<CoilValue> curves = new ArrayList<>();
        long half = Math.max(1, value.terms().reel().mm() / 2);
        for (long halves : halfReels) {
            curves.add(value.on(new Length(half * halves)));
        }
        return coils -> {
            int nearest = 0;
            while (nearest + 1 < halfReels.length
                    && 2 * coils.mm() >= half * (halfReels[nearest] + halfReels[nearest + 1])) {
                nearest++;
            }
            return curves.get(nearest);
        };
    }
}
