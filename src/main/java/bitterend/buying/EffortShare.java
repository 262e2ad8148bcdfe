package bitterend.buying;

import bitterend.packing.Effort;
import java.time.Duration;

/** Hands an effort out over packings whose number is not known beforehand: half to the first, an eighth of the rest to each other. */
final class EffortShare {
    private final Effort effort;
    private final long deadline;
    private boolean begun;
    private boolean ranOut;

    EffortShare(Effort effort) {
        this.effort = effort;
        deadline = System.nanoTime()
                + Math.min(effort.time().toNanos(), Duration.ofDays(365).toNanos());
    }

    /** The effort of the next packing. */
    Effort next() {
        int part = begun ? 8 : 2;
        begun = true;
        Duration left = Duration.ofNanos(Math.max(0, deadline - System.nanoTime()));
        long work = effort.work() == Long.MAX_VALUE ? Long.MAX_VALUE : effort.work() / part;
        return new Effort(
                left.dividedBy(part), work, effort.seed(), effort.threads(), effort.cancelled(), effort.progress());
    }

    /** Whether there is time for one packing more. */
    boolean goesOn() {
        boolean goesOn = System.nanoTime() < deadline && !effort.cancelled().getAsBoolean();
        ranOut |= !goesOn;
        return goesOn;
    }

    /** Whether a packing was given up for want of time. */
    boolean ranOut() {
        return ranOut;
    }
}
