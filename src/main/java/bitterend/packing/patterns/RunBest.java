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
