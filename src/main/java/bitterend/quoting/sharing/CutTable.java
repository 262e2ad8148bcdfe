package bitterend.quoting.sharing;

import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The least cost of cutting any part of a job off new reels, exact, by trying every load for every number of pieces that
 * may still be wanted. Only for jobs small enough that this takes a moment.
 */
final class CutTable {
    private static final int MOST_LOADS = 20_000;
    private static final long MOST_STATES = 200_000;
    private static final long MOST_STEPS = 30_000_000;

    private final NewRope rope;
    private final List<Length> lengths;
    private final int[] demand;
    private final int[] weight;
    private final List<List<Load>> loadsByFirst = new ArrayList<>();
    private final long[] least;
    private int loads;

    /** Pieces taken off one reel: how many of each length, and what that costs. */
    private static final class Load {
        final int[] counts;
        final int code;
        final long cost;

        Load(int[] counts, int code, long cost) {
            this.counts = counts.clone();
            this.code = code;
            this.cost = cost;
        }
    }

    private CutTable(NewRope rope, SortedMap<Length, Integer> demand) {
        this.rope = rope;
        lengths = List.copyOf(demand.keySet());
        this.demand = demand.values().stream().mapToInt(Integer::intValue).toArray();
        weight = new int[lengths.size()];
        int states = 1;
        for (int i = 0; i < weight.length; i++) {
            weight[i] = states;
            states *= this.demand[i] + 1;
            loadsByFirst.add(new ArrayList<>());
        }
        least = new long[states];
    }

    /**
     * The table of a job; nothing when the job is too large for it.
     *
     * @param demand how many pieces of each length
     */
    static Optional<CutTable> of(NewRope rope, SortedMap<Length, Integer> demand) {
        long states = 1;
        for (int count : demand.values()) {
            states *= count + 1L;
            if (states > MOST_STATES) {
                return Optional.empty();
            }
        }
        CutTable table = new CutTable(rope, demand);
        return table.findLoads() && table.fill() ? Optional.of(table) : Optional.empty();
    }

    /** The least cost of cutting these pieces, in 1/1000 minor unit; lengths and numbers within the job. */
    long cost(SortedMap<Length, Integer> pieces) {
        int state = 0;
        for (int i = 0; i < lengths.size(); i++) {
            state += weight[i] * pieces.getOrDefault(lengths.get(i), 0);
        }
        return least[state];
    }

    /** How the whole job is cut at the least cost: for each reel, how many pieces of each length. */
    List<SortedMap<Length, Integer>> loads() {
        List<SortedMap<Length, Integer>> cut = new ArrayList<>();
        int[] open = demand.clone();
        int state = least.length - 1;
        while (state > 0) {
            Load load = best(state, open);
            SortedMap<Length, Integer> pieces = new TreeMap<>();
            for (int i = 0; i < open.length; i++) {
                open[i] -= load.counts[i];
                pieces.merge(lengths.get(i), load.counts[i], Integer::sum);
            }
            cut.add(pieces);
            state -= load.code;
        }
        return cut;
    }

    private Load best(int state, int[] open) {
        return loadsByFirst.get(first(open)).stream()
                .filter(load -> fits(load.counts, open) && load.cost + least[state - load.code] == least[state])
                .findFirst()
                .orElseThrow();
    }

    private boolean findLoads() {
        return extend(0, new int[lengths.size()], 0);
    }

    /** Adds every load that goes on from here; false when there are too many. */
    private boolean extend(int kind, int[] counts, long taken) {
        if (kind == counts.length) {
            add(counts, taken);
            loads++;
            return loads <= MOST_LOADS;
        }
        long each = rope.taken(lengths.get(kind));
        for (int n = 0; n <= demand[kind] && taken + n * each <= rope.room(); n++) {
            counts[kind] = n;
            if (!extend(kind + 1, counts, taken + n * each)) {
                return false;
            }
        }
        counts[kind] = 0;
        return true;
    }

    private void add(int[] counts, long taken) {
        int code = 0;
        int first = -1;
        for (int i = counts.length - 1; i >= 0; i--) {
            code += weight[i] * counts[i];
            first = counts[i] > 0 ? i : first;
        }
        if (first >= 0) {
            loadsByFirst.get(first).add(new Load(counts, code, rope.cost(taken)));
        }
    }

    /** Every state's shortest wanted piece is on some reel: the loads that begin with it are tried. */
    private boolean fill() {
        long steps = 0;
        int[] open = new int[demand.length];
        for (int state = 1; state < least.length; state++) {
            next(open);
            long best = Long.MAX_VALUE;
            List<Load> loads = loadsByFirst.get(first(open));
            steps += loads.size();
            if (steps > MOST_STEPS) {
                return false;
            }
            for (Load load : loads) {
                if (fits(load.counts, open)) {
                    best = Math.min(best, load.cost + least[state - load.code]);
                }
            }
            least[state] = best;
        }
        return true;
    }

    /** Counts up, the first length running fastest. */
    private void next(int[] open) {
        for (int i = 0; i < open.length; i++) {
            if (open[i] < demand[i]) {
                open[i]++;
                return;
            }
            open[i] = 0;
        }
    }

    private static int first(int[] open) {
        int first = 0;
        while (open[first] == 0) {
            first++;
        }
        return first;
    }

    private static boolean fits(int[] counts, int[] open) {
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > open[i]) {
                return false;
            }
        }
        return true;
    }
}
