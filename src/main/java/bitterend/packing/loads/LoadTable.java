package bitterend.packing.loads;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The most that a run earns under every exact load: one layer of cells after each item (R. Bellman, <i>Dynamic
 * Programming</i>, Princeton 1957), no load beating another, since a branch may ask for a load from below. A load that
 * cannot be cut stands below {@link #REACHED}. Used again for the next run: what was worked out before is gone.
 */
final class LoadTable {
    /** Worth of a load that cannot be cut. */
    static final int NEVER = -1_500_000_000;
    /** Loads that can be cut are worth more, all charges and the value of the run taken off. */
    static final int REACHED = -850_000_000;
    /** Charges of a run together are no more. */
    static final int MOST_CHARGES = 400_000_000;

    private Steps steps = new Steps();
    private int cells;
    private final List<int[]> pool = new ArrayList<>();
    private final List<int[]> layers = new ArrayList<>();
    private final List<Integer> opened = new ArrayList<>();
    /** For every charge, the layer it began with. */
    private int[] before = {};

    /** Works a table out; the layer after the last step. */
    int[] fill(Steps by, int largest) {
        steps = by;
        cells = largest + 1;
        for (int l = 0; l < layers.size(); l++) {
            if (l == 0 || layers.get(l) != layers.get(l - 1)) {
                pool.add(layers.get(l));
            }
        }
        layers.clear();
        opened.clear();
        before = new int[by.count()];
        int[] first = layer();
        Arrays.fill(first, 0, cells, NEVER);
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

    private int[] layer() {
        for (int p = pool.size() - 1; p >= 0; p--) {
            if (pool.get(p).length >= cells) {
                return pool.remove(p);
            }
        }
        return new int[cells];
    }

    private void step(int s) {
        switch (steps.at(s, 0)) {
            case Steps.OPEN -> {
                opened.add(layers.size() - 1);
                layers.add(last());
            }
            case Steps.CHARGE -> {
                before[s] = opened.remove(opened.size() - 1);
                int[] next = layer();
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
        int size = steps.at(s, 2);
        int price = steps.at(s, 3);
        int least = steps.at(s, 4);
        int most = Math.min(steps.at(s, 5), (cells - 1) / size);
        if (least == 0) {
            return upTo(most, size, price, from);
        }
        int[] next = layer();
        Arrays.fill(next, 0, cells, NEVER);
        for (int q = least; q <= most; q++) {
            raise(from, q * size, q * price, next, cells);
        }
        return next;
    }

    /** Up to so many copies: none or one, then as many again and so on, so that seven copies take three passes. */
    private int[] upTo(int most, int size, int price, int[] from) {
        int[] layer = from;
        int copies = 0;
        while (copies < most) {
            int more = Math.min(copies + 1, most - copies);
            int[] next = layer();
            raised(layer, more * size, more * price, next, cells);
            if (layer != from) {
                pool.add(layer);
            }
            layer = next;
            copies += more;
        }
        return layer;
    }

    private static void raised(int[] from, int shift, int worth, int[] next, int cells) {
        System.arraycopy(from, 0, next, 0, shift);
        for (int c = shift; c < cells; c++) {
            next[c] = Math.max(from[c], from[c - shift] + worth);
        }
    }

    private static void raise(int[] from, int shift, int worth, int[] next, int cells) {
        int length = cells - shift;
        for (int c = 0; c < length; c++) {
            next[c + shift] = Math.max(next[c + shift], from[c] + worth);
        }
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
