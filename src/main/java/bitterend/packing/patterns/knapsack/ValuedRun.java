package bitterend.packing.patterns.knapsack;

import java.util.function.LongUnaryOperator;

/** A run as the engine sees it: every piece carries its cut loss, so loads simply add up to at most {@link #cap}. */
public final class ValuedRun {
    /** Length of the run itself. */
    public final long length;
    /** Length and one cut loss. */
    public final long cap;
    /** Price of cutting it off unused. */
    public final long handling;
    /** Value of the whole run. */
    public final long full;

    private final LongUnaryOperator value;

    /** @param value worth of what is left, by its length */
    public ValuedRun(long length, long cap, long handling, LongUnaryOperator value) {
        this.length = length;
        this.cap = cap;
        this.handling = handling;
        this.value = value;
        this.full = value.applyAsLong(length);
    }

    /** What is left is worth nothing whatever is drawn. */
    public boolean flat() {
        return full == 0;
    }

    /** What the run loses when pieces of this load are drawn from it. */
    public long drop(long load) {
        if (full == 0) {
            return 0;
        }
        return full - value.applyAsLong(Math.max(0, length - load));
    }
}
