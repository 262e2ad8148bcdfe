package bitterend.packing.patterns;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * How long to try. With a work limit only, the same seed gives the same plan on every machine.
 *
 * @param work steps of the inner loops, roughly a hundred million a second
 * @param time by the clock
 * @param cancelled asked often; the best plan so far is kept when it turns true
 * @param listener told of every better plan and bound
 * @param seed of all random choices
 * @param depth how much to try before giving the answer
 */
public record Effort(
        long work, Duration time, BooleanSupplier cancelled, Consumer<Progress> listener, long seed, Depth depth) {
    /** How much to try. */
    public enum Depth {
        /** Bound and one dive: for being called thousands of times inside a study. */
        QUICK,
        /** Everything, until proven or out of effort. */
        FULL
    }

    private static final Duration AGES = Duration.ofDays(365);

    public Effort {
        if (work < 0 || time.isNegative()) {
            throw new IllegalArgumentException("effort must not be negative: " + work + ", " + time);
        }
    }

    /** As long as the clock allows. */
    public static Effort ofTime(Duration time) {
        return new Effort(Long.MAX_VALUE, time, () -> false, progress -> {}, 1, Depth.FULL);
    }

    /** A number of steps, whatever the clock says. */
    public static Effort ofWork(long work) {
        return new Effort(work, AGES, () -> false, progress -> {}, 1, Depth.FULL);
    }

    /** One packing among thousands. */
    public static Effort quick() {
        return new Effort(4_000_000, AGES, () -> false, progress -> {}, 1, Depth.QUICK);
    }

    public Effort withCancel(BooleanSupplier newCancelled) {
        return new Effort(work, time, newCancelled, listener, seed, depth);
    }

    public Effort withListener(Consumer<Progress> newListener) {
        return new Effort(work, time, cancelled, newListener, seed, depth);
    }
}
