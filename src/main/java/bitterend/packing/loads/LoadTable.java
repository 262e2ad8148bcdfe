package bitterend.packing.loads;

import bitterend.packing.cells.Passes;
import java.util.ArrayList;
import java.util.List;

/**
 * The most that a run earns under every exact load: one layer of cells after each item (R. Bellman, <i>Dynamic
 * Programming</i>, Princeton 1957), no load beating another, since a branch may ask for a load from below. A load that
 * cannot be cut stands below {@link #REACHED}. Used again for the next run: what was worked out before is gone.
 */
final class LoadTable {
    /** Worth of a load that cannot be cut. */
    static final int NEVER = Passes.NEVER;
    /** Loads that can be cut are worth more, all charges and the value of the run taken off. */
    static final int REACHED = -850_000_000;
    /** Charges of a run together are no more. */
    static final int MOST_CHARGES = 400_000_000;

    private Steps steps = new Steps();
    private int cells;
    private final Passes passes = new Passes();
    private final List<int[]> layers = new ArrayList<>();
    private final List<Integer> opened = new ArrayList<>();
    /** For every charge, the layer it began with. */
    private int[] before = {};

    /** Works a table out; the layer after the last step. */
    int[] fill(Steps by, int largest) {
        steps = by;
        cells = largest + 1;
        passes.giveBack(layers);
        passes.cells(cells);
        layers.clear();
        opened.clear();
        before = new int[by.count()];
        int[] first = passes.emptyRow();
        first[0] = 0;
        layers.add(first);
        for (int s = 0; s < by.count(); s++) {
            step(s);
        }
        return last();
    }

    private int[] last() {
        return layers.get(layers.size() - 1);
    }

    private void step(int s) {
        switch (steps.at(s, 0)) {
            case Steps.OPEN -> {
                opened.add(layers.size() - 1);
                layers.add(last());
            }
            case Steps.CHARGE -> {
                before[s] = opened.remove(opened.size() - 1);
                int[] next = passes.row();
                if (steps.at(s, 2) == 1) {
                    charge(last(), steps.at(s, 1), next, cells);
                } else {
                    charge(layers.get(before[s]), last(), steps.at(s, 1), next, cells);
                }
                layers.add(next);
            }
            default -> layers.add(cut(s, last()));
        }
    }

    private int[] cut(int s, int[] from) {
        return passes.copies(from, steps.at(s, 2), steps.at(s, 3), steps.at(s, 4), steps.at(s, 5));
    }

    private static void charge(int[] from, int charge, int[] next, int cells) {
        for (int c = 0; c < cells; c++) {
            next[c] = Math.max(NEVER, from[c] - charge);
        }
    }

    private static void charge(int[] without, int[] with, int charge, int[] next, int cells) {
        for (int c = 0; c < cells; c++) {
            next[c] = Math.max(Math.max(NEVER, without[c]), with[c] - charge);
        }
    }

    /** What is cut for a load: pairs of item and number, in the order of the steps. */
    List<int[]> takes(int load) {
        List<int[]> takes = new ArrayList<>();
        int at = load;
        int s = steps.count() - 1;
        while (s >= 0) {
            int[] from = layers.get(s);
            int[] next = layers.get(s + 1);
            if (steps.at(s, 0) == Steps.CHARGE) {
                boolean without = steps.at(s, 2) == 0 && layers.get(before[s])[at] == next[at];
                s = without ? before[s] - 1 : s - 1;
            } else if (steps.at(s, 0) == Steps.ITEM) {
                int taken = taken(s, from, next, at);
                if (taken > 0) {
                    takes.add(new int[] {steps.at(s, 1), taken});
                    at -= taken * steps.at(s, 2);
                }
                s--;
            } else {
                s--;
            }
        }
        return takes;
    }

    private int taken(int s, int[] from, int[] next, int at) {
        int size = steps.at(s, 2);
        int most = Math.min(steps.at(s, 5), at / size);
        for (int q = steps.at(s, 4); q <= most; q++) {
            if (from[at - q * size] > REACHED && from[at - q * size] + q * steps.at(s, 3) == next[at]) {
                return q;
            }
        }
        throw new IllegalStateException("no way to a load of " + at + " cells");
    }
}
