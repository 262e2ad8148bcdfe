package bitterend.packing.search;

/**
 * Which of some sizes fill a room as full as can be: a depth-first search that tries them in the order given and gives up
 * after a number of nodes. After the minimum bin slack heuristic: J. N. D. Gupta, J. C. Ho, "A new heuristic algorithm for
 * the one-dimensional bin-packing problem", Production Planning &amp; Control 10(6), 1999.
 */
final class SubsetFill {
    private final long[] sizes;
    private final long room;
    private final long[] rest;
    private final boolean[] chosen;
    private boolean[] best;
    private long bestSum;
    private int nodes;

    private SubsetFill(long[] sizes, long room, int nodes) {
        this.sizes = sizes;
        this.room = room;
        this.nodes = nodes;
        chosen = new boolean[sizes.length];
        best = new boolean[sizes.length];
        rest = new long[sizes.length + 1];
        for (int i = sizes.length - 1; i >= 0; i--) {
            rest[i] = rest[i + 1] + sizes[i];
        }
    }

    /** Marks the sizes chosen; all positive. */
    static boolean[] of(long[] sizes, long room, int nodes) {
        SubsetFill fill = new SubsetFill(sizes, room, nodes);
        fill.search(0, 0);
        return fill.best;
    }

    private void search(int from, long sum) {
        if (sum > bestSum) {
            bestSum = sum;
            best = chosen.clone();
        }
        for (int i = from; i < sizes.length && bestSum < room && sum + rest[i] > bestSum && nodes > 0; i++) {
            boolean repeated = i > from && sizes[i] == sizes[i - 1];
            if (!repeated && sum + sizes[i] <= room) {
                nodes--;
                chosen[i] = true;
                search(i + 1, sum + sizes[i]);
                chosen[i] = false;
            }
        }
    }
}
