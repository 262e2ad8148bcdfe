package bitterend.packing.model;

import bitterend.measure.Length;
import bitterend.stock.StockValue;

/**
 * Worth of a run by its length, looked up once for each length of those met lately: the search asks for the same lengths
 * over and over. Serves one search, hence one thread.
 */
final class KnownValues {
    private static final int SLOTS = 1 << 12;

    private final StockValue value;
    private final long[] lengths = new long[SLOTS];
    private final long[] millis = new long[SLOTS];

    KnownValues(StockValue value) {
        this.value = value;
        java.util.Arrays.fill(lengths, -1);
    }

    long millisOf(long mm) {
        int slot = (int) ((mm * 0x9E3779B97F4A7C15L) >>> 52);
        if (lengths[slot] != mm) {
            millis[slot] = value.of(new Length(mm)).millis();
            lengths[slot] = mm;
        }
        return millis[slot];
    }
}
