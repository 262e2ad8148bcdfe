package bitterend.packing.patterns;

import java.util.function.LongUnaryOperator;

/** A run as the engine sees it: every piece carries its cut loss, so loads simply add up to at most {@link #cap}. */
final class ValuedRun {
    /** Length of the run itself. */
    final long length;
    /** Length and one cut loss. */
    final long cap;
    /** Price of cutting it off unused. */
    final long handling;
    /** Value of the whole run. */
    final long full;

    private final LongUnaryOperator value;

    ValuedRun(long length, long cap, long handling, LongUnaryOperator value) {
        this.length = length;
        this.cap = cap;
        this.handling = handling;
        this.value = value;
        this.full = value.applyAsLong(length);
    }

    /** What is left is worth nothing whatever is drawn. */
    boolean flat() {
        return full == 0;
    }

    /** What the run loses when pieces of this load are drawn from it. */
    long drop(long load) {
        if (full == 0) {
            return 0;
        }
        return full - value.applyAsLong(Math.max(0, length - load));
    }
}
