package bitterend.packing.loads;

import bitterend.packing.Packing;
import bitterend.packing.Undone;

/** Who keeps the best plan while the engine works; plans may come from elsewhere at the same time. */
public interface Plans {
    /** A plan that may be better than the best so far. */
    void offer(Packing packing);

    /** The best so far. */
    Standing best();

    /**
     * The best plan so far.
     *
     * @param packing the plan
     * @param work what it leaves undone
     * @param cost its true price, in 1/1000 minor unit
     */
    record Standing(Packing packing, Undone work, long cost) {
        /** Weight of what it leaves undone, by class, the most urgent first; the caller's own copy. */
        long[] undone() {
            return work.weights().stream().mapToLong(Long::longValue).toArray();
        }
    }
}
