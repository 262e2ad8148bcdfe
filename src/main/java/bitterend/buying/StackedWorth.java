package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilValue;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The worth of a coil on the rack with so many metres of new coils there before it. Every coil waits behind those: five new
 * reels are not worth five times the first. Between two steps of metres the next one counts, so that nothing is worth more
 * than it should be.
 */
final class StackedWorth {
    private final StockValue usual;
    private final Map<Length, StockValue> curves = new ConcurrentHashMap<>();

    StackedWorth(StockValue usual) {
        this.usual = usual;
    }

    /** What a coil is worth behind so many metres of new coils, never more than on the rack as it is. */
    Cost of(Length coil, Length before) {
        Cost alone = usual.of(coil);
        if (!(usual instanceof CoilValue curve) || !before.isPositive()) {
            return alone;
        }
        Length step = step(curve.terms().reel(), before);
        Cost behind = curves.computeIfAbsent(step, more -> curve.on(curve.rack().plus(more)))
                .of(coil);
        return behind.compareTo(alone) < 0 ? behind : alone;
    }

    /** One half of a usual reel, two, three, four, six, eight, twelve and so on. */
    private static Length step(Length reel, Length before) {
        long half = Math.max(1, reel.mm() / 2);
        long halves = 1;
        while (half * halves < before.mm()) {
            boolean power = Long.bitCount(halves) == 1;
            halves = halves == 1 ? 2 : power ? halves / 2 * 3 : halves / 3 * 4;
        }
        return new Length(half * halves);
    }
}
