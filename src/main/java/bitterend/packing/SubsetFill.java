package bitterend.packing;

import java.util.Arrays;

/**
 * Which of some sizes fill a room as full as can be: a depth-first search that tries them in the order given and gives up
 * after a number of nodes. After the minimum bin slack heuristic: J. N. D. Gupta, J. C. Ho, "A new heuristic algorithm for
 * the one-dimensional bin-packing problem", Production Planning &amp; Control 10(6), 1999.
 */
public final class SubsetFill {
    private final long[] sizes;
    private final long room;
    private final long[] promise;
    private final boolean[] chosen;
    private boolean[] best;
    private long bestSum;
    private int nodes;

    private SubsetFill(long[] sizes, long room, int nodes, long[] promise) {
        this.sizes = sizes;
        this.room = room;
        this.nodes = nodes;
        this.promise = promise;
        chosen = new boolean[sizes.length];
        best = new boolean[sizes.length];
    }

    /** Marks the sizes chosen; all sizes are positive. None is chosen when none fits. */
    public static boolean[] of(long[] sizes, long room, int nodes) {
        long[] rest = new long[sizes.length + 1];
        for (int i = sizes.length - 1; i >= 0; i--) {
            rest[i] = rest[i + 1] + sizes[i];
        }
        return of(sizes, room, nodes, rest);
    }

    /** The same without looking ahead: a branch is entered even when all that is left cannot beat the best. */
    public static boolean[] straightOn(long[] sizes, long room, int nodes) {
        long[] anything = new long[sizes.length + 1];
        Arrays.fill(anything, room);
        return of(sizes, room, nodes, anything);
    }

    private static boolean[] of(long[] sizes, long room, int nodes, long[] promise) {
        SubsetFill fill = new SubsetFill(sizes, room, nodes, promise);
        fill.search(0, 0);
        return fill.best;
    }

    private void search(int from, long sum) {
        if (sum > bestSum) {
            bestSum = sum;
            best = chosen.clone();
        }
        for (int i = from; i < sizes.length && bestSum < room && sum + promise[i] > bestSum && nodes > 0; i++) {
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
