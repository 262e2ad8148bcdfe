package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.List;

/** Every pattern of a small task, by trying every number of every item in every run. */
final class AllPatterns {
    private static final int MOST = 4_000;

    private final Instance instance;
    private final List<Pattern> found = new ArrayList<>();
    private final List<int[]> takes = new ArrayList<>();
    private final int[] left;

    private AllPatterns(Instance instance) {
        this.instance = instance;
        left = instance.demand.clone();
    }

    /** All of them, the empty one left out; none when there are too many. */
    static List<Pattern> of(Instance instance) {
        AllPatterns all = new AllPatterns(instance);
        for (ReelType type : instance.types) {
            all.fill(type, 0, 0, 0);
        }
        return all.found.size() > MOST ? List.of() : all.found;
    }

    /** Those that no piece could be added to at no cost; all of them where that is not to be had. */
    static List<Pattern> fullest(Instance instance) {
        List<Pattern> all = of(instance);
        return all.stream()
                .filter(pattern -> all.stream().noneMatch(other -> outdoes(instance, other, pattern)))
                .toList();
    }

    /** The same pieces and more for the same money, where a piece cut once too often costs nothing. */
    @SuppressWarnings("ReferenceEquality") // the pattern itself, not one like it
    static boolean outdoes(Instance instance, Pattern other, Pattern pattern) {
        ReelType type = instance.types[pattern.type];
        boolean more = other.type == pattern.type && other.cost <= pattern.cost && other != pattern;
        int pieces = 0;
        for (int t = 0; t < pattern.item.length; t++) {
            more &= other.countOf(pattern.item[t]) >= pattern.count[t];
            pieces -= pattern.count[t];
        }
        for (int count : other.count) {
            pieces += count;
        }
        return type.single() && type.flat() && instance.trimmable() && more && pieces > 0;
    }

    private void fill(ReelType type, int run, int item, long load) {
        if (found.size() > MOST) {
            return;
        }
        if (item == instance.items) {
            if (run + 1 < type.runs.length) {
                fill(type, run + 1, 0, 0);
            } else if (!takes.isEmpty()) {
                found.add(pattern(type));
            }
            return;
        }
        fill(type, run, item + 1, load);
        int most = left[item];
        for (int count = 1; count <= most && load + count * type.load[item] <= type.runs[run].cap; count++) {
            takes.add(new int[] {run, item, count});
            left[item] -= count;
            fill(type, run, item + 1, load + count * type.load[item]);
            left[item] += count;
            takes.remove(takes.size() - 1);
        }
    }

    private Pattern pattern(ReelType type) {
        int[] runs = takes.stream().mapToInt(take -> take[0]).toArray();
        int[] items = takes.stream().mapToInt(take -> take[1]).toArray();
        int[] counts = takes.stream().mapToInt(take -> take[2]).toArray();
        return Pattern.of(instance, type.index, runs, items, counts, runs.length);
    }
}
