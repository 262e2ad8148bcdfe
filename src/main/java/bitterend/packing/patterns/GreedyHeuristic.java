package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import bitterend.packing.patterns.knapsack.Exact;
import java.util.Comparator;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Fills reel after reel with what is still wanted, choosing each time the kind that gives most for its cost.
 *
 * <p>Sources: D. S. Johnson, "Near-optimal bin packing algorithms", MIT 1973 (longest first); J. N. D. Gupta, J. C. Ho,
 * "A new heuristic algorithm for the one-dimensional bin-packing problem", Production Planning and Control 10 (1999)
 * 598-603 (least slack); K. Fleszar, K. S. Hindi, "New heuristics for one-dimensional bin-packing", Computers and
 * Operations Research 29 (2002) 821-839.
 */
final class GreedyHeuristic {
    /** How a run is filled. */
    enum Manner {
        LONGEST_FIRST,
        LEAST_SLACK
    }

    private static final int NODES = 2_000;

    private final Instance instance;
    private final Random random;
    /** Items by rope, longest first. */
    private final int[][] order;

    private final int[] run;
    private final int[] item;
    private final int[] count;
    private int size;

    GreedyHeuristic(Instance instance, Random random) {
        this.instance = instance;
        this.random = random;
        order = new int[instance.ropes][];
        int longest = 1;
        for (ReelType type : instance.types) {
            if (order[type.rope] == null) {
                order[type.rope] = sorted(type.load);
            }
            longest = Math.max(longest, type.runs.length);
        }
        int room = (instance.items + 1) * longest;
        run = new int[room];
        item = new int[room];
        count = new int[room];
    }

    private static int[] sorted(long[] load) {
        return IntStream.range(0, load.length)
                .filter(i -> load[i] != ReelType.NEVER)
                .boxed()
                .sorted(Comparator.comparingLong((Integer i) -> load[i]).reversed())
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /**
     * Adds reels to the plan until nothing fits any more. What is wanted only ever becomes less: how a kind was filled holds as
     * long as all of that is still wanted.
     *
     * @param worth of each item, for choosing between kinds
     * @param noise in a thousand, of the choice between kinds
     */
    void complete(PartialPlan plan, long[] worth, Manner manner, int noise, Budget budget) {
        @Nullable Pattern[] filled = new Pattern[instance.types.length];
        while (!budget.over()) {
            Pattern best = Pattern.NOTHING;
            long bestValue = 0;
            for (ReelType type : instance.types) {
                if (plan.supply[type.index] <= 0) {
                    continue;
                }
                Pattern pattern = filled[type.index];
                if (pattern == null || (!pattern.empty() && plan.room(pattern) == 0)) {
                    pattern = fill(type, plan.residual, manner, budget);
                    filled[type.index] = pattern;
                }
                long value = worthOf(pattern, worth);
                if (noise > 0) {
                    value = value / 1000 * (1000 - noise + random.nextInt(2 * noise + 1));
                }
                if (!pattern.empty()
                        && (best.empty()
                                || Exact.compareProducts(value, best.cost + 1, bestValue, pattern.cost + 1) > 0)) {
                    best = pattern;
                    bestValue = value;
                }
            }
            if (best.empty()) {
                return;
            }
            plan.cut(best, plan.room(best));
        }
    }

    private static long worthOf(Pattern pattern, long[] worth) {
        long sum = 0;
        for (int t = 0; t < pattern.item.length; t++) {
            sum += worth[pattern.item[t]] * pattern.count[t];
        }
        return sum;
    }

    private Pattern fill(ReelType type, int[] residual, Manner manner, Budget budget) {
        size = 0;
        int[] left = type.single() ? residual : residual.clone();
        for (int r = 0; r < type.runs.length; r++) {
            int from = size;
            if (manner == Manner.LONGEST_FIRST) {
                longestFirst(type, r, left);
            } else {
                new Slack(type, r, left, budget).fill();
            }
            for (int t = from; t < size && !type.single(); t++) {
                left[item[t]] -= count[t];
            }
        }
        return size == 0 ? Pattern.NOTHING : Pattern.of(instance, type.index, run, item, count, size);
    }

    private void longestFirst(ReelType type, int r, int[] left) {
        long rest = type.runs[r].cap;
        for (int i : order[type.rope]) {
            if (left[i] > 0 && type.load[i] <= rest) {
                int c = (int) Math.min(left[i], rest / type.load[i]);
                take(r, i, c);
                rest -= c * type.load[i];
            }
        }
    }

    private void take(int r, int i, int c) {
        run[size] = r;
        item[size] = i;
        count[size++] = c;
    }

    /** Fills one run as full as can be, with the longest piece that fits among them. */
    private final class Slack {
        final ReelType type;
        final int place;
        final int[] items;
        final int[] most;
        final long[] shortest;
        final Budget budget;
        int wide;
        long best = Long.MAX_VALUE;
        int nodes;
        int[] chosen;
        int[] kept;

        Slack(ReelType type, int place, int[] left, Budget budget) {
            this.type = type;
            this.place = place;
            this.budget = budget;
            items = new int[instance.items];
            most = new int[instance.items];
            for (int i : order[type.rope]) {
                if (left[i] > 0 && type.load[i] <= type.runs[place].cap) {
                    most[wide] = left[i];
                    items[wide++] = i;
                }
            }
            shortest = new long[wide + 1];
            shortest[wide] = Long.MAX_VALUE;
            for (int t = wide - 1; t >= 0; t--) {
                shortest[t] = Math.min(shortest[t + 1], type.load[items[t]]);
            }
            chosen = new int[wide];
            kept = new int[wide];
        }

        void fill() {
            if (wide == 0) {
                return;
            }
            chosen[0] = 1;
            descend(0, type.runs[place].cap - type.load[items[0]], most[0] - 1);
            budget.spend(nodes);
            for (int t = 0; t < wide; t++) {
                if (kept[t] > 0) {
                    take(place, items[t], kept[t]);
                }
            }
        }

        private void descend(int from, long rest, int leftOfFrom) {
            if (rest < best) {
                best = rest;
                System.arraycopy(chosen, 0, kept, 0, wide);
            }
            int more = leftOfFrom;
            for (int t = from; t < wide && best > 0 && nodes < NODES && shortest[t] <= rest; t++) {
                long load = type.load[items[t]];
                if (more > 0 && load <= rest) {
                    nodes++;
                    int c = (int) Math.min(more, rest / load);
                    for (int take = c; take > 0 && best > 0 && nodes < NODES; take--) {
                        chosen[t] += take;
                        descend(t + 1, rest - take * load, t + 1 < wide ? most[t + 1] : 0);
                        chosen[t] -= take;
                    }
                }
                more = t + 1 < wide ? most[t + 1] : 0;
            }
        }
    }
}
