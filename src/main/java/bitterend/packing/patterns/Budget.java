package bitterend.packing.patterns;

import java.time.Duration;
import java.util.function.BooleanSupplier;

/** What may still be spent. Looks at the clock and the cancel flag every so many steps only. */
final class Budget {
    private static final long LOOK = 1 << 14;

    private final long limit;
    private final long deadline;
    private final BooleanSupplier stop;
    private long spent;
    private long looked;
    private boolean over;

    private Budget(long limit, long deadline, BooleanSupplier stop) {
        this.limit = limit;
        this.deadline = deadline;
        this.stop = stop;
    }

    static Budget of(Effort effort) {
        long now = System.nanoTime();
        Duration time = effort.time();
        return new Budget(effort.work(), now + time.toNanos(), effort.cancelled());
    }

    static Budget endless() {
        return new Budget(Long.MAX_VALUE, System.nanoTime() + (Long.MAX_VALUE >> 2), () -> false);
    }

    /** A part of this one: over when its own limit is reached or this is over. Call {@link #charge} when done. */
    Budget part(long work) {
        return new Budget(Math.min(work, Math.max(0, limit - spent)), deadline, stop);
    }

    /** A part that also ends by the clock. */
    Budget part(long work, Duration time) {
        long end = Math.min(deadline - System.nanoTime(), time.toNanos());
        return new Budget(Math.min(work, Math.max(0, limit - spent)), System.nanoTime() + end, stop);
    }

    /** A part that also ends when told so. */
    Budget until(BooleanSupplier told) {
        return new Budget(Math.max(0, limit - spent), deadline, () -> stop.getAsBoolean() || told.getAsBoolean());
    }

    /** Takes over what a part has spent. */
    void charge(Budget part) {
        spend(part.spent);
    }

    /** Spends some steps; true once nothing is left. */
    boolean spend(long steps) {
        spent += steps;
        if (spent - looked >= LOOK) {
            look();
        }
        return over;
    }

    private void look() {
        looked = spent;
        over |= spent > limit || System.nanoTime() - deadline >= 0 || stop.getAsBoolean();
    }

    boolean over() {
        if (!over) {
            look();
        }
        return over;
    }

    long spent() {
        return spent;
    }

    /** Milliseconds on the clock, many when there is no clock. */
    long millisLeft() {
        return Math.max(0, (deadline - System.nanoTime()) / 1_000_000);
    }
}
