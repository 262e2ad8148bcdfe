package bitterend.buying.steady;

import bitterend.buying.RackWorth;
import bitterend.measure.Length;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilValue;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What a coil is worth by its length, in steps: quick to look up. */
final class CoilTable {
    private static final int STEPS = 2_000;

    private final long[] worth;
    private final int step;

    private CoilTable(long[] worth, int step) {
        this.worth = worth;
        this.step = step;
    }

    /** A curve by its own steps, or by a two-thousandth of the longest reel, rounded down. */
    static CoilTable of(StockValue value, int longest) {
        if (value instanceof CoilValue coil) {
            return new CoilTable(
                    coil.steps(), Math.toIntExact(coil.terms().grid().mm()));
        }
        int step = Math.max(1, (longest + STEPS - 1) / STEPS);
        long[] worth = new long[longest / step + 1];
        Arrays.setAll(worth, i -> value.of(new Length((long) i * step)).millis());
        return new CoilTable(worth, step);
    }

    /** In 1/1000 minor unit. */
    long of(int mm) {
        return worth[Math.min(worth.length - 1, mm / step)];
    }

    /** The curves of the racks that a rope may have, each made once. */
    static final class OfRacks {
        private final RackWorth racks;
        private final int longest;
        private final Map<StockValue, CoilTable> known = new ConcurrentHashMap<>();

        OfRacks(RackWorth racks, int longest) {
            this.racks = racks;
            this.longest = longest;
        }

        /** On a rack of so many millimetres of coils. */
        CoilTable on(long coils) {
            return known.computeIfAbsent(racks.on(new Length(coils)), value -> of(value, longest));
        }

        /** Every coil, from the shortest, on a rack of those counted before it; the first so many of the array, which is sorted. */
        long all(int[] coils, int count) {
            Arrays.sort(coils, 0, count);
            long before = 0;
            long worth = 0;
            for (int i = 0; i < count; i++) {
                worth += on(before).of(coils[i]);
                before += coils[i];
            }
            return worth;
        }
    }
}
