package bitterend.packing.patterns;

import bitterend.packing.patterns.knapsack.RunSolution;
import java.util.ArrayList;
import java.util.List;

/** All ways to draw from a reel of several runs that bring at least so much, put together from ways of its runs. */
final class ReelEnumeration {
    private final Instance instance;
    private final ReelType type;
    private final long enough;
    private final FoundPatterns found;
    /** The most that each run can bring. */
    private final long[] best;
    /** What cutting off each run unused brings. */
    private final long[] skip;
    /** What may be lost against the best way whose last drawn run is this one; below zero where that is too poor. */
    private final long[] loss;

    private final long opening;
    private final int[] left;
    private final List<RunSolution> chosen = new ArrayList<>();
    private List<List<RunSolution>> ways = List.of();

    /**
     * @param best the most that each run can bring, in {@code 1/scale} of a unit of cost
     * @param enough what a way has to bring
     */
    ReelEnumeration(Instance instance, ReelType type, long scale, long[] best, long enough, FoundPatterns found) {
        this.instance = instance;
        this.type = type;
        this.enough = enough;
        this.found = found;
        this.best = best;
        left = instance.demand.clone();
        opening = -type.opening * scale;
        skip = new long[best.length];
        loss = new long[best.length];
        long before = opening;
        for (int r = 0; r < best.length; r++) {
            skip[r] = -type.runs[r].handling * scale;
            loss[r] = before + best[r] - enough;
            before += Math.max(best[r], skip[r]);
        }
    }

    /** The most that any way may lose against the best ones of its runs; below zero when there is no way at all. */
    long widest() {
        long widest = Long.MIN_VALUE;
        for (long each : loss) {
            widest = Math.max(widest, each);
        }
        return widest;
    }

    /** @param byRun for every run its ways, best first */
    void join(List<List<RunSolution>> byRun) {
        ways = byRun;
        for (int last = 0; last < best.length && found.all(); last++) {
            if (loss[last] >= 0) {
                combine(0, last, opening);
            }
        }
    }

    /** The most that runs from here to the last can add. */
    private long hope(int from, int last) {
        long sum = 0;
        for (int r = from; r <= last; r++) {
            sum += r == last ? best[r] : Math.max(best[r], skip[r]);
        }
        return sum;
    }

    private void combine(int r, int last, long sum) {
        if (!found.step()) {
            return;
        }
        if (r > last) {
            keep();
            return;
        }
        long rest = hope(r + 1, last);
        if (r < last && sum + skip[r] + rest >= enough) {
            choose(RunSolution.none(0), r, last, sum + skip[r]);
        }
        for (RunSolution way : ways.get(r)) {
            if (sum + way.reducedProfit() + rest < enough) {
                return;
            }
            if (take(way, 1)) {
                choose(way, r, last, sum + way.reducedProfit());
            }
            take(way, -1);
        }
    }

    private void choose(RunSolution way, int r, int last, long sum) {
        chosen.add(way);
        combine(r + 1, last, sum);
        chosen.remove(chosen.size() - 1);
    }

    /** Takes the pieces of a way, or gives them back; whether no piece is cut too often. */
    private boolean take(RunSolution way, int times) {
        boolean within = true;
        for (int t = 0; t < way.items().length; t++) {
            left[way.items()[t]] -= times * way.counts()[t];
            within &= left[way.items()[t]] >= 0;
        }
        return within;
    }

    private void keep() {
        if (!found.room(0)) {
            return;
        }
        int size = 0;
        for (RunSolution way : chosen) {
            size += way.items().length;
        }
        int[] runs = new int[size];
        int[] items = new int[size];
        int[] counts = new int[size];
        size = 0;
        for (int r = 0; r < chosen.size(); r++) {
            RunSolution way = chosen.get(r);
            for (int t = 0; t < way.items().length; t++) {
                runs[size] = r;
                items[size] = way.items()[t];
                counts[size++] = way.counts()[t];
            }
        }
        found.add(Pattern.of(instance, type.index, runs, items, counts, size));
    }
}
