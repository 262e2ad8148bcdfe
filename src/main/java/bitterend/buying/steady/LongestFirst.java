package bitterend.buying.steady;

import java.util.Arrays;

/** The pieces of a week in the order in which they are put on rope. */
final class LongestFirst {
    private LongestFirst() {}

    /** What waits, then the week's, each from the longest. */
    static int[] of(int[] waiting, int waitingCount, int[] ordered) {
        int[] cuts = Arrays.copyOf(waiting, waitingCount + ordered.length);
        System.arraycopy(ordered, 0, cuts, waitingCount, ordered.length);
        sort(cuts, 0, waitingCount);
        sort(cuts, waitingCount, cuts.length);
        return cuts;
    }

    private static void sort(int[] cuts, int from, int to) {
        Arrays.sort(cuts, from, to);
        for (int a = from, b = to - 1; a < b; a++, b--) {
            int cut = cuts[a];
            cuts[a] = cuts[b];
            cuts[b] = cut;
        }
    }
}
