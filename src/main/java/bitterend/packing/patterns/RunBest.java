package bitterend.packing.patterns;

/** The best way to draw from one run. */
final class RunBest {
    private final long net;
    private final int[] items;
    private final int[] counts;

    /**
     * @param net worth less drop; what no way to draw can exceed
     * @param items taken, empty when nothing better than asked for was found
     * @param counts of each
     */
    RunBest(long net, int[] items, int[] counts) {
        this.net = net;
        this.items = items;
        this.counts = counts;
    }

    static RunBest none(long net) {
        return new RunBest(net, new int[0], new int[0]);
    }

    /** @param all how many of every item, mostly none */
    static RunBest of(long net, int[] all) {
        int size = 0;
        for (int c : all) {
            size += c > 0 ? 1 : 0;
        }
        int[] items = new int[size];
        int[] counts = new int[size];
        size = 0;
        for (int i = 0; i < all.length; i++) {
            if (all[i] > 0) {
                items[size] = i;
                counts[size++] = all[i];
            }
        }
        return new RunBest(net, items, counts);
    }

    long net() {
        return net;
    }

    int[] items() {
        return items;
    }

    int[] counts() {
        return counts;
    }

    boolean found() {
        return items.length > 0;
    }
}
