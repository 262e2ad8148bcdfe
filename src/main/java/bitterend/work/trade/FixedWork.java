package bitterend.work.trade;

import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.PackingProblem;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.LongSupplier;

/**
 * Packs by a fixed amount of work, so that the same pieces are packed alike whenever and wherever they are packed; the time
 * only stops what takes too long, and that is remembered. The work of an effort is for each piece here.
 */
final class FixedWork implements Packer {
    /** A few pieces are not proven by the work of a few. */
    private static final int AS_IF_MORE = 20;

    /** So many pieces have the most work; more have less in proportion, for each step of theirs takes longer. */
    private static final int MOST = 80;

    private static final Duration NO_CLOCK = Duration.ofDays(1);

    private final Packer packer;
    private final LongSupplier nanos;
    private final AtomicBoolean cutShort = new AtomicBoolean();

    /** @param nanos the clock that the time of an effort is held against */
    FixedWork(Packer packer, LongSupplier nanos) {
        this.packer = packer;
        this.nanos = nanos;
    }

    @Override
    public Result pack(PackingProblem problem, Effort effort) {
        long begun = nanos.getAsLong();
        long allowed = Math.min(effort.time().toNanos(), NO_CLOCK.toNanos());
        int pieces = problem.pieces().size();
        long most = effort.work() * (Math.min(pieces, MOST) + AS_IF_MORE);
        long work = pieces > MOST ? most * MOST / pieces : most;
        return packer.pack(
                problem,
                new Effort(
                        NO_CLOCK,
                        work,
                        effort.seed(),
                        effort.threads(),
                        () -> effort.cancelled().getAsBoolean() || isOver(begun, allowed),
                        effort.progress()));
    }

    private boolean isOver(long begun, long most) {
        boolean over = nanos.getAsLong() - begun > most;
        if (over) {
            cutShort.set(true);
        }
        return over;
    }

    /** Whether the time ended a packing before its work was done. */
    boolean isCutShort() {
        return cutShort.get();
    }
}
