package bitterend.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight scale from amounts to places on a picture.
 *
 * @param from the amount at {@code start}
 * @param to the amount at {@code end}; above {@code from}
 * @param start place of the smallest amount
 * @param end place of the largest; may lie before {@code start}
 */
record BuyAxis(long from, long to, long start, long end) {
    private static final int MOST_TICKS = 7;

    /** Holds all amounts between two, with a little room above. */
    static BuyAxis holding(long from, long to, long start, long end) {
        return new BuyAxis(from, Math.max(from + 1, to + (to - from) / 20), start, end);
    }

    long place(long amount) {
        return start + (amount - from) * (end - start) / (to - from);
    }

    /** Round amounts within the scale: steps of 1, 2 or 5 times a power of ten. */
    List<Long> ticks() {
        long step = 1;
        for (int i = 0; (to - from) / step > MOST_TICKS; i++) {
            step = i % 3 == 0 ? step * 2 : i % 3 == 1 ? step / 2 * 5 : step * 2;
        }
        List<Long> ticks = new ArrayList<>();
        for (long tick = -Math.floorDiv(-from, step) * step; tick <= to; tick += step) {
            ticks.add(tick);
        }
        return ticks;
    }
}
