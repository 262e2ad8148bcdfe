package bitterend.packing.bench;

import bitterend.packing.Undone;
import java.util.Arrays;

/**
 * How good a packing is: what it leaves undone, class by class, and of that the less the better: its cost in 1/1000 minor
 * unit, or, while only work counts, how scattered the rope is that it leaves.
 */
final class Standing implements Comparable<Standing> {
    private final long[] undone;
    private final long rest;

    private Standing(long[] undone, long rest) {
        this.undone = undone;
        this.rest = rest;
    }

    static Standing of(RackState rack) {
        return of(rack, Undone.CLASSES, true);
    }

    /** @param limit later classes do not count */
    static Standing of(RackState rack, int limit, boolean forMoney) {
        long[] undone = Arrays.copyOf(rack.undone(), limit);
        return new Standing(undone, forMoney ? rack.millis() : -rack.rope());
    }

    boolean isLessWork(Standing other) {
        return Arrays.compare(undone, other.undone) < 0;
    }

    /** Whether a packing that leaves that much undone and costs at least that much is no better than this one. */
    boolean isNoWorseThan(long[] otherUndone, long least) {
        int work = Arrays.compare(otherUndone, undone);
        return work > 0 || (work == 0 && least >= rest);
    }

    /** Nothing is left undone in a class from 1. */
    boolean isNothingIn(int urgency) {
        return undone[urgency - 1] == 0;
    }

    @Override
    public int compareTo(Standing other) {
        int work = Arrays.compare(undone, other.undone);
        return work != 0 ? work : Long.compare(rest, other.rest);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Standing standing && compareTo(standing) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(undone) + Long.hashCode(rest);
    }

    @Override
    public String toString() {
        return Arrays.toString(undone) + " with " + rest;
    }
}
