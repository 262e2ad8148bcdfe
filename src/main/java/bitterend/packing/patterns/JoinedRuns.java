package bitterend.packing.patterns;

/**
 * The best way to draw from a reel of several runs: each run by itself, where runs before the last one drawn are drawn
 * or cut off.
 */
final class JoinedRuns {
    private final Kind kind;
    private final Question question;
    private final RunBest[] bests;
    private long net = Pricer.LOW;
    private int last = -1;

    JoinedRuns(RunSearch search) {
        kind = search.kind;
        question = search.question;
        bests = new RunBest[kind.runs.length];
        long before = -kind.opening * question.scale;
        for (int r = 0; r < bests.length; r++) {
            RunBest best = search.best(r, Pricer.LOW);
            bests[r] = best;
            if (best.net() > Pricer.LOW && before + best.net() > net) {
                net = before + best.net();
                last = r;
            }
            before += Math.max(best.net(), cutOff(r));
        }
    }

    /** What cutting off a run unused brings. */
    private long cutOff(int r) {
        return -kind.runs[r].handling * question.scale;
    }

    /** No way to draw from the reel brings more. */
    long net() {
        return net;
    }

    /** One pattern of the ways to draw from the runs; no item is taken more often than it may be. */
    Pattern pattern(Task task) {
        int[] left = question.bound.clone();
        int most = 0;
        for (int r = 0; r <= last; r++) {
            most += bests[r].items().length;
        }
        int[] runs = new int[most];
        int[] items = new int[most];
        int[] counts = new int[most];
        int size = 0;
        for (int r = 0; r <= last; r++) {
            if (r < last && bests[r].net() <= cutOff(r)) {
                continue;
            }
            for (int t = 0; t < bests[r].items().length; t++) {
                int item = bests[r].items()[t];
                int count = Math.min(left[item], bests[r].counts()[t]);
                left[item] -= count;
                runs[size] = r;
                items[size] = item;
                counts[size++] = count;
            }
        }
        return Pattern.of(task, kind.index, runs, items, counts, size);
    }
}
