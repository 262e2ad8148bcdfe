package bitterend.packing.effort;

import bitterend.packing.linear.Simplex;
import java.time.Duration;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** What may still be spent. Looks at the clock and the cancel flag every so many steps only. */
public final class Budget implements Simplex.Steps {
    private static final long LOOK = 1 << 14;
    private static final int PER_CENT = 100;

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

    /** So many steps, so long by the clock, and until told to stop. */
    public static Budget of(long work, Duration time, BooleanSupplier cancelled) {
        return new Budget(work, System.nanoTime() + time.toNanos(), cancelled);
    }

    /** Never over. */
    public static Budget endless() {
        return new Budget(Long.MAX_VALUE, System.nanoTime() + (Long.MAX_VALUE >> 2), () -> false);
    }

    /** A part of this one: over when its own limit is reached or this is over. Call {@link #charge} when done. */
    public Budget part(long work) {
        return new Budget(Math.min(work, Math.max(0, limit - spent)), deadline, stop);
    }

    /** A part that also ends by the clock. */
    public Budget part(long work, Duration time) {
        long end = Math.min(deadline - System.nanoTime(), time.toNanos());
        return new Budget(Math.min(work, Math.max(0, limit - spent)), System.nanoTime() + end, stop);
    }

    /** Has something done within so many per cent of what is left, of the work and by the clock. */
    public void within(int percent, Consumer<Budget> task) {
        long work = limit == Long.MAX_VALUE ? limit : Math.max(0, limit - spent) / PER_CENT * percent;
        Budget part = part(work, Duration.ofMillis(millisLeft() / PER_CENT * percent));
        task.accept(part);
        charge(part);
    }

    /** Takes over what a part has spent. */
    public void charge(Budget part) {
        spend(part.spent);
    }

    /** Spends some steps; true once nothing is left. */
    @Override
    public boolean spend(long steps) {
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

    /** Whether nothing is left. */
    public boolean over() {
        if (!over) {
            look();
        }
        return over;
    }

    /** Steps that may still be spent. */
    public long left() {
        return Math.max(0, limit - spent);
    }

    /** Steps spent so far. */
    public long spent() {
        return spent;
    }

    /** Milliseconds on the clock, many when there is no clock. */
    public long millisLeft() {
        return Math.max(0, (deadline - System.nanoTime()) / 1_000_000);
    }
}
