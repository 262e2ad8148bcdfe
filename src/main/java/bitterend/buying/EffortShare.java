package bitterend.buying;

import bitterend.packing.Effort;
import java.time.Duration;

/**
 * Hands an effort out over packings whose number is not known beforehand: a fifth to the first, a third of the rest to the
 * second, an eighth of the rest to each other.
 */
final class EffortShare {
    private Effort effort;
    private long deadline;
    private int begun;
    private boolean ranOut;

    EffortShare(Effort effort) {
        this.effort = effort;
        deadline = deadline(effort);
    }

    /** From now on this much in place of what was left; the next packing is the second. */
    void grant(Effort other) {
        effort = other;
        deadline = deadline(other);
    }

    private static long deadline(Effort effort) {
        return System.nanoTime()
                + Math.min(effort.time().toNanos(), Duration.ofDays(365).toNanos());
    }

    /** The effort of the next packing. */
    Effort next() {
        int part = begun == 0 ? 5 : begun == 1 ? 3 : 8;
        begun++;
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
