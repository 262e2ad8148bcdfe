package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/** Every plan of a small task that can be made of some patterns, as the number of times each is used. */
final class AllPlans {
    private final List<Pattern> patterns;
    private final int[] left;
    private final int[] supply;
    private final int[] times;
    private final Consumer<int[]> told;
    private final boolean exactly;
    private long steps;

    private AllPlans(Instance instance, List<Pattern> patterns, long steps, Consumer<int[]> told) {
        this.patterns = patterns;
        this.told = told;
        this.steps = steps;
        exactly = !instance.trimmable();
        left = instance.demand.clone();
        times = new int[patterns.size()];
        supply = new int[instance.types.length];
        for (ReelType type : instance.types) {
            supply[type.index] = type.supply;
        }
    }

    /** Tells of every plan that serves all pieces, some too often where that costs nothing; false when so many steps were not enough. */
    static boolean tell(Instance instance, List<Pattern> patterns, long steps, Consumer<int[]> told) {
        AllPlans all = new AllPlans(instance, patterns, steps, told);
        all.serve(0, 0);
        return all.steps > 0;
    }

    /** Least cost of such a plan; nothing known when there are too many. */
    static List<Long> cheapest(Instance instance, List<Pattern> patterns, long steps) {
        List<Long> costs = new ArrayList<>();
        boolean all = tell(instance, patterns, steps, times -> {
            long cost = 0;
            for (int p = 0; p < times.length; p++) {
                cost += times[p] * patterns.get(p).cost;
            }
            if (costs.isEmpty() || cost < costs.get(0)) {
                costs.clear();
                costs.add(cost);
            }
        });
        return all ? costs : List.of();
    }

    private void serve(int from, int item) {
        int open = item;
        while (open < left.length && left[open] <= 0) {
            open++;
        }
        if (open == left.length) {
            if (!exactly || Arrays.stream(left).allMatch(more -> more == 0)) {
                told.accept(times);
            }
            return;
        }
        for (int p = open == item ? from : 0; p < patterns.size() && steps-- > 0; p++) {
            Pattern pattern = patterns.get(p);
            if (pattern.countOf(open) > 0 && supply[pattern.type] > 0) {
                use(pattern, p, 1);
                serve(p, open);
                use(pattern, p, -1);
            }
        }
    }

    private void use(Pattern pattern, int number, int by) {
        pattern.takeFrom(left, by);
        supply[pattern.type] -= by;
        times[number] += by;
    }
}
