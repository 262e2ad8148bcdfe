package bitterend.packing.patterns.knapsack;

/** The best way to draw from one run. */
public final class RunSolution {
    private final long reducedProfit;
    private final int[] items;
    private final int[] counts;

    /**
     * @param reducedProfit worth less drop; what no way to draw can exceed
     * @param items taken, empty when nothing better than asked for was found
     * @param counts of each
     */
    public RunSolution(long reducedProfit, int[] items, int[] counts) {
        this.reducedProfit = reducedProfit;
        this.items = items;
        this.counts = counts;
    }

    /** Nothing is better than this. */
    public static RunSolution none(long reducedProfit) {
        return new RunSolution(reducedProfit, new int[0], new int[0]);
    }

    /** @param all how many of every item, mostly none */
    public static RunSolution of(long reducedProfit, int[] all) {
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
        return new RunSolution(reducedProfit, items, counts);
    }

    /** What it brings at the prices less what the run loses. */
    public long reducedProfit() {
        return reducedProfit;
    }

    /** The items taken. */
    public int[] items() {
        return items;
    }

    /** How many of each of {@link #items()}. */
    public int[] counts() {
        return counts;
    }

    /** Whether anything is taken. */
    public boolean found() {
        return items.length > 0;
    }
}
