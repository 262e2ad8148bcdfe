package bitterend.packing.patterns.fewest;

import java.util.Arrays;

/** What is cut from one reel: items, the longest first, and how many of each. */
final class Column {
    final int[] item;
    final int[] count;

    Column(int[] item, int[] count) {
        this.item = item;
        this.count = count;
    }

    /** @param all how many of every item; of at least one there is one */
    static Column of(int[] all) {
        int size = 0;
        for (int each : all) {
            size += each > 0 ? 1 : 0;
        }
        int[] item = new int[size];
        int[] count = new int[size];
        size = 0;
        for (int i = 0; i < all.length; i++) {
            if (all[i] > 0) {
                item[size] = i;
                count[size++] = all[i];
            }
        }
        return new Column(item, count);
    }

    /** The item of its longest piece. */
    int leader() {
        return item[0];
    }

    /** At whole prices of the items. */
    long worth(int[] prices) {
        long worth = 0;
        for (int t = 0; t < item.length; t++) {
            worth += (long) prices[item[t]] * count[t];
        }
        return worth;
    }

    int countOf(int wanted) {
        int at = Arrays.binarySearch(item, wanted);
        return at < 0 ? 0 : count[at];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Column that && Arrays.equals(item, that.item) && Arrays.equals(count, that.count);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(item) + Arrays.hashCode(count);
    }
}
