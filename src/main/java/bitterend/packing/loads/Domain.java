package bitterend.packing.loads;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * What plans a node of the tree speaks of: loads of runs, holders of sets, lots of orders, what may stay undone, and
 * copies of an item in a run. Whoever narrows it calls {@link #spread} afterwards.
 */
final class Domain {
    private final LoadModel model;
    /** Work that may be left undone by class. */
    final long[] allowed;
    /** Least and largest load of every run; 0 is a run that is not touched. */
    final int[] least;

    final int[] most;
    /** Holders still open for every set, a bit each. */
    final long[] holders;
    /** Lots that must and that may be taken by every order, a bit each. */
    final int[] mustLots;

    final int[] mayLots;
    /** How many of every item must and may stay undone. */
    final int[] leastUndone;

    final int[] mostUndone;
    /** Least and most copies by run and item, where a branch limits them. */
    private final Map<Long, int[]> copies;

    /** All plans that leave no more undone than is allowed. */
    Domain(LoadModel model, long[] allowed) {
        this.model = model;
        this.allowed = allowed;
        least = new int[model.runs.length];
        most = Arrays.stream(model.runs).mapToInt(run -> run.room).toArray();
        holders = Arrays.stream(model.sets)
                .mapToLong(set -> (1L << set.holders.size()) - 1)
                .toArray();
        mustLots = new int[model.orders.length];
        mayLots = Arrays.stream(model.orders)
                .mapToInt(order -> (1 << order.lots.size()) - 1)
                .toArray();
        leastUndone = new int[model.items.length];
        mostUndone = Arrays.stream(model.items)
                .mapToInt(item -> allowed[item.urgency] >= item.weight ? item.count() : 0)
                .toArray();
        copies = new HashMap<>();
    }

    private Domain(Domain from) {
        model = from.model;
        allowed = from.allowed;
        least = from.least.clone();
        most = from.most.clone();
        holders = from.holders.clone();
        mustLots = from.mustLots.clone();
        mayLots = from.mayLots.clone();
        leastUndone = from.leastUndone.clone();
        mostUndone = from.mostUndone.clone();
        copies = new HashMap<>(from.copies);
    }

    Domain copy() {
        return new Domain(this);
    }

    /** Whether a set may stay undone. */
    boolean mayStayUndone(SetOfPieces set) {
        return set.items.stream().allMatch(item -> mostUndone[item.index] >= item.count());
    }

    boolean mustStayUndone(SetOfPieces set) {
        return set.items.stream().anyMatch(item -> leastUndone[item.index] > 0);
    }

    /** The fewest and the most copies of an item in a run. */
    int leastCopies(int run, Item item) {
        int[] limits = copies.get(key(run, item.index));
        return limits == null ? 0 : limits[0];
    }

    int mostCopies(int run, Item item) {
        int free = item.count() - leastUndone[item.index];
        int[] limits = copies.get(key(run, item.index));
        return limits == null ? free : Math.min(free, limits[1]);
    }

    void limitCopies(int run, int item, int from, int to) {
        copies.put(key(run, item), new int[] {from, to});
    }

    /** Whether any run is to hold some of an item. */
    boolean hasLimits() {
        return !copies.isEmpty();
    }

    private static long key(int run, int item) {
        return ((long) run << 32) | item;
    }

    /** Whether a piece of an item may lie on a reel as far as its set and its order go. */
    boolean isOpen(Item item, int reel) {
        int slot = item.slot[reel];
        if (slot == Item.NONE) {
            return false;
        }
        if (item.set != Item.NONE) {
            return (holders[item.set] >> slot & 1) != 0;
        }
        return item.order == Item.NONE || (mayLots[item.order] >> slot & 1) != 0;
    }

    /** Draws what follows; false when no plan is left. */
    boolean spread() {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (SetOfPieces set : model.sets) {
                changed |= spread(set);
            }
            for (ReelOfRuns reel : model.reels) {
                changed |= spread(reel);
            }
            changed |= spreadUndone();
            if (isEmpty()) {
                return false;
            }
        }
        return true;
    }

    private boolean isEmpty() {
        for (int j = 0; j < least.length; j++) {
            if (least[j] > most[j]) {
                return true;
            }
        }
        for (int o = 0; o < mustLots.length; o++) {
            if ((mustLots[o] & ~mayLots[o]) != 0) {
                return true;
            }
        }
        for (Item item : model.items) {
            if (leastUndone[item.index] > mostUndone[item.index]) {
                return true;
            }
        }
        for (SetOfPieces set : model.sets) {
            if (holders[set.index] == 0 && !mayStayUndone(set)) {
                return true;
            }
        }
        return false;
    }

    private boolean spread(SetOfPieces set) {
        long before = holders[set.index];
        long open = mustStayUndone(set) ? 0 : before;
        if (set.order != Item.NONE) {
            for (int h = 0; h < set.lotOfHolder.length; h++) {
                if ((mayLots[set.order] >> set.lotOfHolder[h] & 1) == 0) {
                    open &= ~(1L << h);
                }
            }
        }
        holders[set.index] = open;
        boolean changed = open != before;
        if (open == 0 && !mustStayUndone(set) && mayStayUndone(set)) {
            set.items.forEach(item -> leastUndone[item.index] = item.count());
            changed = true;
        }
        if (set.order != Item.NONE && Long.bitCount(open) == 1 && !mayStayUndone(set)) {
            int lot = 1 << set.lotOfHolder[Long.numberOfTrailingZeros(open)];
            changed |= (mustLots[set.order] & lot) == 0;
            mustLots[set.order] |= lot;
        }
        return changed;
    }

    /** Reels that are alike are loaded in falling order. */
    private boolean spread(ReelOfRuns reel) {
        if (reel.next == Item.NONE) {
            return false;
        }
        int a = reel.runs[0].index;
        int b = model.reels[reel.next].runs[0].index;
        boolean changed = false;
        if (most[b] > most[a]) {
            most[b] = most[a];
            changed = true;
        }
        if (least[a] < least[b]) {
            least[a] = least[b];
            changed = true;
        }
        return changed;
    }

    /** No more of an item may stay undone than its class allows beside what must. */
    private boolean spreadUndone() {
        long[] left = allowed.clone();
        for (Item item : model.items) {
            left[item.urgency] -= item.weight * leastUndone[item.index];
        }
        boolean changed = false;
        for (Item item : model.items) {
            long more = left[item.urgency] < 0 ? -1 : left[item.urgency] / item.weight;
            long most = Math.min(mostUndone[item.index], leastUndone[item.index] + more);
            changed |= most < mostUndone[item.index];
            mostUndone[item.index] = (int) most;
        }
        return changed;
    }
}
