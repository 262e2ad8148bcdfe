package bitterend.packing.patterns;

import java.util.Arrays;

/** One way to draw from one reel: takes in the order of runs, then items. */
final class Pattern {
    /** Draws nothing. */
    static final Pattern NOTHING = new Pattern(0, new int[0], new int[0], new int[0], new int[0], new int[0], 0);

    final int type;
    /** Parallel arrays, one entry for each take. */
    final int[] run;

    final int[] takeItem;
    final int[] takeCount;
    /** Summed over runs, items ascending. */
    final int[] item;

    final int[] count;
    final long cost;

    private Pattern(int type, int[] run, int[] takeItem, int[] takeCount, int[] item, int[] count, long cost) {
        this.type = type;
        this.run = run;
        this.takeItem = takeItem;
        this.takeCount = takeCount;
        this.item = item;
        this.count = count;
        this.cost = cost;
    }

    /**
     * Sorts, sums and prices the takes.
     *
     * @param length how many entries of the arrays count
     */
    static Pattern of(Instance instance, int type, int[] run, int[] item, int[] count, int length) {
        long[] order = new long[length];
        for (int t = 0; t < length; t++) {
            order[t] = ((long) run[t] << 52) | ((long) item[t] << 24) | t;
        }
        Arrays.sort(order);
        int[] runs = new int[length];
        int[] items = new int[length];
        int[] counts = new int[length];
        int size = 0;
        for (long key : order) {
            int t = (int) (key & 0xFFFFFF);
            if (count[t] <= 0) {
                continue;
            }
            if (size > 0 && runs[size - 1] == run[t] && items[size - 1] == item[t]) {
                counts[size - 1] += count[t];
                continue;
            }
            runs[size] = run[t];
            items[size] = item[t];
            counts[size++] = count[t];
        }
        runs = Arrays.copyOf(runs, size);
        items = Arrays.copyOf(items, size);
        counts = Arrays.copyOf(counts, size);
        return summed(instance, type, runs, items, counts);
    }

    private static Pattern summed(Instance instance, int type, int[] runs, int[] items, int[] counts) {
        long cost = costOf(instance.types[type], runs, items, counts);
        if (items.length == 0 || runs[0] == runs[runs.length - 1]) {
            return new Pattern(type, runs, items, counts, items, counts, cost);
        }
        int[] sorted = Arrays.stream(items).distinct().sorted().toArray();
        int[] sums = new int[sorted.length];
        for (int t = 0; t < items.length; t++) {
            sums[Arrays.binarySearch(sorted, items[t])] += counts[t];
        }
        return new Pattern(type, runs, items, counts, sorted, sums, cost);
    }

    private static long costOf(ReelType type, int[] runs, int[] items, int[] counts) {
        if (items.length == 0) {
            return 0;
        }
        long cost = type.opening;
        int t = 0;
        int last = runs[runs.length - 1];
        for (int r = 0; r <= last; r++) {
            long load = 0;
            for (; t < items.length && runs[t] == r; t++) {
                load += counts[t] * type.load[items[t]];
            }
            if (load > type.runs[r].cap) {
                throw new IllegalArgumentException("load " + load + " does not fit " + type.runs[r].cap);
            }
            cost += load == 0 ? type.runs[r].handling : type.runs[r].drop(load);
        }
        return cost;
    }

    /** The same takes priced by another task over the same items and kinds. */
    Pattern in(Instance instance) {
        return new Pattern(
                type, run, takeItem, takeCount, item, count, costOf(instance.types[type], run, takeItem, takeCount));
    }

    /** One piece of an item less, from the last run that holds it. */
    Pattern without(Instance instance, int less) {
        int[] counts = takeCount.clone();
        for (int t = takeItem.length - 1; t >= 0; t--) {
            if (takeItem[t] == less) {
                counts[t]--;
                return of(instance, type, run, takeItem, counts, counts.length);
            }
        }
        throw new IllegalArgumentException("item " + less + " is not in the pattern");
    }

    boolean empty() {
        return item.length == 0;
    }

    int countOf(int wanted) {
        int at = Arrays.binarySearch(item, wanted);
        return at < 0 ? 0 : count[at];
    }

    /** How often it can be cut within what is still wanted. */
    int timesWithin(int[] residual) {
        int times = Integer.MAX_VALUE;
        for (int t = 0; t < item.length; t++) {
            times = Math.min(times, residual[item[t]] / count[t]);
        }
        return times;
    }

    void takeFrom(int[] residual, int times) {
        for (int t = 0; t < item.length; t++) {
            residual[item[t]] -= count[t] * times;
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Pattern that
                && type == that.type
                && Arrays.equals(run, that.run)
                && Arrays.equals(takeItem, that.takeItem)
                && Arrays.equals(takeCount, that.takeCount);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * (31 * type + Arrays.hashCode(run)) + Arrays.hashCode(takeItem)) + Arrays.hashCode(takeCount);
    }
}
