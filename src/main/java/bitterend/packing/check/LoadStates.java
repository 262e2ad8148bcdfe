package bitterend.packing.check;

import java.util.Arrays;
import java.util.List;
import java.util.function.LongUnaryOperator;

/**
 * The loads that a run may carry, each with its greatest worth: a plain list of states, one line of pieces after the other,
 * its number in powers of two (Martello and Toth 1990, chapter 3). A charge on a group is taken by filling the group on a
 * copy of the list and keeping the better of the two. Size 0 is the run that is not touched, and outdoes no other load.
 */
final class LoadStates {
    private static final int BLOCK = 32;

    private final long room;
    private final boolean exact;
    private long[] sizes = {0};
    private long[] worths = {0};
    private final Work work;

    private LoadStates(long room, boolean exact, Work work) {
        this.room = room;
        this.exact = exact;
        this.work = work;
    }

    /** States that may still be looked at. */
    static final class Work {
        private long left;

        Work(long left) {
            this.left = left;
        }

        void spend(long states) {
            left -= states;
            if (left < 0) {
                throw new ProofTooLarge();
            }
        }
    }

    /**
     * Pieces that are alike for one run.
     *
     * @param size cut length and cut loss, in mm; positive
     * @param worth price of one piece
     * @param count how many there are
     * @param least how many must be on the run
     */
    record Item(long size, long worth, int count, int least) {}

    /**
     * Pieces that share a charge, taken once when any of them is on the run.
     *
     * @param charge never negative
     * @param items the pieces
     * @param inner groups within, with charges of their own
     */
    record Group(long charge, List<Item> items, List<Group> inner) {
        Group {
            items = List.copyOf(items);
            inner = List.copyOf(inner);
        }

        boolean isForced() {
            return items.stream().anyMatch(item -> item.least() > 0)
                    || inner.stream().anyMatch(Group::isForced);
        }
    }

    /**
     * The loads up to a size.
     *
     * @param all every piece that may be on the run
     * @param room no load is longer, in mm
     * @param exact whether a load is kept though a shorter one is worth as much
     */
    static LoadStates of(Group all, long room, boolean exact, Work work) {
        LoadStates states = new LoadStates(room, exact, work);
        states.fill(all);
        return states;
    }

    private void fill(Group group) {
        long[] sizesBefore = sizes;
        long[] worthsBefore = worths;
        group.items().forEach(this::take);
        group.inner().forEach(this::fill);
        if (group.charge() > 0) {
            long[] charged = new long[worths.length];
            for (int i = 0; i < charged.length; i++) {
                charged[i] = Math.subtractExact(worths[i], group.charge());
            }
            worths = charged;
            if (!group.isForced()) {
                int untouched = sizes.length > 0 && sizes[0] == 0 ? 1 : 0;
                merge(sizesBefore, worthsBefore, sizes, worths, untouched, 0, 0);
            }
        }
    }

    private void take(Item item) {
        if (item.least() > 0) {
            long size = Math.multiplyExact((long) item.least(), item.size());
            long worth = Math.multiplyExact((long) item.least(), item.worth());
            merge(new long[0], new long[0], sizes, worths, 0, size, worth);
        }
        long most = Math.min(item.count() - (long) item.least(), room / item.size());
        for (long bundle = 1; most > 0; bundle *= 2) {
            long taken = Math.min(bundle, most);
            merge(
                    sizes,
                    worths,
                    sizes,
                    worths,
                    0,
                    Math.multiplyExact(taken, item.size()),
                    Math.multiplyExact(taken, item.worth()));
            most -= taken;
        }
    }

    /** The better of two lists at each size, the second one from a place on and shifted. */
    private void merge(long[] size1, long[] worth1, long[] size2, long[] worth2, int from2, long size, long worth) {
        long[] newSizes = new long[size1.length + size2.length - from2];
        long[] newWorths = new long[newSizes.length];
        int count = 0;
        int a = 0;
        int b = from2;
        while (true) {
            boolean moreB = b < size2.length && size2[b] + size <= room;
            if (a >= size1.length && !moreB) {
                break;
            }
            boolean first = a < size1.length && (!moreB || size1[a] <= size2[b] + size);
            long nextSize = first ? size1[a] : size2[b] + size;
            long nextWorth = first ? worth1[a++] : Math.addExact(worth2[b++], worth);
            if (count > 0 && newSizes[count - 1] == nextSize) {
                newWorths[count - 1] = Math.max(newWorths[count - 1], nextWorth);
            } else if (exact || count == 0 || newSizes[count - 1] == 0 || nextWorth > newWorths[count - 1]) {
                newSizes[count] = nextSize;
                newWorths[count] = nextWorth;
                count++;
            }
        }
        work.spend(a + b - from2 + 1L);
        sizes = Arrays.copyOf(newSizes, count);
        worths = Arrays.copyOf(newWorths, count);
    }

    /**
     * The greatest worth of a load between two sizes and the value of what is left beside it; {@link Long#MIN_VALUE} when
     * there is no such load.
     *
     * @param leftValue value of what a load of so many mm leaves; never rises with the load
     */
    long most(long least, long longest, LongUnaryOperator leftValue) {
        long most = Long.MIN_VALUE;
        int end = firstFrom(longest + 1);
        for (int from = firstFrom(least); from < end; from += BLOCK) {
            int to = Math.min(end, from + BLOCK);
            long value = leftValue.applyAsLong(sizes[from]);
            for (int i = from; i < to; i++) {
                if (Math.addExact(worths[i], value) > most) {
                    most = Math.max(most, Math.addExact(worths[i], leftValue.applyAsLong(sizes[i])));
                }
            }
        }
        return most;
    }

    private int firstFrom(long size) {
        int at = Arrays.binarySearch(sizes, size);
        return at >= 0 ? at : -at - 1;
    }
}
