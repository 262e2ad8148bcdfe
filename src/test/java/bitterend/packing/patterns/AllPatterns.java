package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.List;

/** Every pattern of a small task, by trying every number of every item in every run. */
final class AllPatterns {
    private static final int MOST = 4_000;

    private final Task task;
    private final List<Pattern> found = new ArrayList<>();
    private final List<int[]> takes = new ArrayList<>();
    private final int[] left;

    private AllPatterns(Task task) {
        this.task = task;
        left = task.demand.clone();
    }

    /** All of them, the empty one left out; none when there are too many. */
    static List<Pattern> of(Task task) {
        AllPatterns all = new AllPatterns(task);
        for (Kind kind : task.kinds) {
            all.fill(kind, 0, 0, 0);
        }
        return all.found.size() > MOST ? List.of() : all.found;
    }

    /** Those that no piece could be added to at no cost; all of them where that is not to be had. */
    static List<Pattern> fullest(Task task) {
        List<Pattern> all = of(task);
        return all.stream()
                .filter(pattern -> all.stream().noneMatch(other -> outdoes(task, other, pattern)))
                .toList();
    }

    /** The same pieces and more for the same money, where a piece cut once too often costs nothing. */
    @SuppressWarnings("ReferenceEquality") // the pattern itself, not one like it
    static boolean outdoes(Task task, Pattern other, Pattern pattern) {
        Kind kind = task.kinds[pattern.kind];
        boolean more = other.kind == pattern.kind && other.cost <= pattern.cost && other != pattern;
        int pieces = 0;
        for (int t = 0; t < pattern.item.length; t++) {
            more &= other.countOf(pattern.item[t]) >= pattern.count[t];
            pieces -= pattern.count[t];
        }
        for (int count : other.count) {
            pieces += count;
        }
        return kind.single() && kind.flat() && task.trimmable() && more && pieces > 0;
    }

    private void fill(Kind kind, int run, int item, long load) {
        if (found.size() > MOST) {
            return;
        }
        if (item == task.items) {
            if (run + 1 < kind.runs.length) {
                fill(kind, run + 1, 0, 0);
            } else if (!takes.isEmpty()) {
                found.add(pattern(kind));
            }
            return;
        }
        fill(kind, run, item + 1, load);
        int most = left[item];
        for (int count = 1; count <= most && load + count * kind.load[item] <= kind.runs[run].cap; count++) {
            takes.add(new int[] {run, item, count});
            left[item] -= count;
            fill(kind, run, item + 1, load + count * kind.load[item]);
            left[item] += count;
            takes.remove(takes.size() - 1);
        }
    }

    private Pattern pattern(Kind kind) {
        int[] runs = takes.stream().mapToInt(take -> take[0]).toArray();
        int[] items = takes.stream().mapToInt(take -> take[1]).toArray();
        int[] counts = takes.stream().mapToInt(take -> take[2]).toArray();
        return Pattern.of(task, kind.index, runs, items, counts, runs.length);
    }
}
