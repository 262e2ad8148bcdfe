package bitterend.packing.patterns;

import bitterend.packing.patterns.knapsack.ValuedRun;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The cheapest way to draw any state from one reel of a kind, run after run. */
final class OneReel {
    static final long NEVER = Long.MAX_VALUE / 4;

    private final Instance instance;
    private final ReelType type;
    private final States states;
    private final long[] cost;
    private final int[] lastRun;
    /** Cheapest cost of a state when that run is drawn last, and the state before that run. */
    private final long[][] drawn;

    private final int[][] before;
    private final int[] reachable;
    private long work;

    OneReel(Instance instance, ReelType type, States states) {
        this.instance = instance;
        this.type = type;
        this.states = states;
        int size = states.size();
        cost = filled(size);
        lastRun = new int[size];
        drawn = new long[type.runs.length][];
        before = new int[type.runs.length][];
        draw();
        reachable = java.util.stream.IntStream.range(1, size)
                .filter(s -> cost[s] < NEVER)
                .toArray();
    }

    /** States that can be drawn, nothing at all left out. */
    int[] reachable() {
        return reachable;
    }

    long cost(int state) {
        return cost[state];
    }

    /** Steps spent. */
    long work() {
        return work;
    }

    private void draw() {
        long[] reached = filled(states.size());
        reached[0] = type.opening;
        for (int r = 0; r < type.runs.length; r++) {
            ValuedRun run = type.runs[r];
            drawn[r] = filled(states.size());
            before[r] = new int[states.size()];
            for (int take = 1; take < states.size(); take++) {
                long load = states.load(take, type.load);
                if (load <= run.cap) {
                    draw(r, reached, take, run.drop(load));
                }
            }
            for (int s = 0; s < states.size(); s++) {
                if (drawn[r][s] < cost[s]) {
                    cost[s] = drawn[r][s];
                    lastRun[s] = r;
                }
                reached[s] = Math.min(drawn[r][s], reached[s] + run.handling);
            }
        }
    }

    private void draw(int r, long[] reached, int take, long drop) {
        work += states.size();
        for (int s = 0; s + take < states.size(); s++) {
            if (reached[s] < NEVER && reached[s] + drop < drawn[r][s + take] && states.addable(s, take)) {
                drawn[r][s + take] = reached[s] + drop;
                before[r][s + take] = s;
            }
        }
    }

    /** The takes that draw a state at its cheapest. */
    Pattern pattern(int state) {
        List<int[]> takes = new ArrayList<>();
        int rest = state;
        int r = lastRun[state];
        while (rest != 0) {
            int earlier = before[r][rest];
            for (int i = 0; i < instance.items; i++) {
                int count = states.count(rest, i) - states.count(earlier, i);
                if (count > 0) {
                    takes.add(new int[] {r, i, count});
                }
            }
            rest = earlier;
            r = rest == 0 ? 0 : runBefore(r, rest);
        }
        return Pattern.of(instance, type.index, column(takes, 0), column(takes, 1), column(takes, 2), takes.size());
    }

    /** The run that was drawn last to reach a state before a later run. */
    private int runBefore(int later, int state) {
        int best = later - 1;
        long handled = 0;
        long least = NEVER;
        for (int r = later - 1; r >= 0; r--) {
            if (drawn[r][state] < NEVER && drawn[r][state] + handled < least) {
                least = drawn[r][state] + handled;
                best = r;
            }
            handled += type.runs[r].handling;
        }
        return best;
    }

    private static int[] column(List<int[]> takes, int column) {
        return takes.stream().mapToInt(take -> take[column]).toArray();
    }

    private static long[] filled(int size) {
        long[] array = new long[size];
        Arrays.fill(array, NEVER);
        return array;
    }
}
