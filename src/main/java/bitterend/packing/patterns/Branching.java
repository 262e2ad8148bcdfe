package bitterend.packing.patterns;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What to branch on: reels of one kind, two pieces in one reel, or at last one pattern. */
final class Branching {
    private static final double WHOLE = 1e-5;

    private final Task task;
    private final boolean counted;
    private final List<Pattern> columns;
    private final double[] x;

    Branching(Task task, boolean counted, List<Pattern> columns, double[] x) {
        this.task = task;
        this.counted = counted;
        this.columns = columns;
        this.x = x;
    }

    @Nullable
    Branch choose() {
        if (counted) {
            Branch kind = kind();
            if (kind != null) {
                return kind;
            }
        }
        Branch pair = pair();
        return pair != null ? pair : single();
    }

    private static double distance(double value) {
        return Math.abs(value - Math.rint(value));
    }

    private Branch of(IntPredicate member, double value) {
        int[] at = IntStream.range(0, columns.size())
                .filter(j -> !columns.get(j).empty() && member.test(j))
                .toArray();
        return new Branch(at, value);
    }

    private @Nullable Branch kind() {
        double[] sums = new double[task.kinds.length];
        for (int j = 0; j < x.length; j++) {
            if (!columns.get(j).empty()) {
                sums[columns.get(j).kind] += x[j];
            }
        }
        int chosen = -1;
        for (int k = 0; k < sums.length; k++) {
            if (distance(sums[k]) > WHOLE && (chosen < 0 || distance(sums[k]) > distance(sums[chosen]))) {
                chosen = k;
            }
        }
        int kind = chosen;
        return kind < 0 ? null : of(j -> columns.get(j).kind == kind, sums[kind]);
    }

    private @Nullable Branch pair() {
        Map<Long, Double> sums = new HashMap<>();
        for (int j = 0; j < x.length; j++) {
            Pattern p = columns.get(j);
            if (x[j] < WHOLE || p.empty() || distance(x[j]) < WHOLE) {
                continue;
            }
            for (int a = 0; a < p.item.length; a++) {
                for (int b = p.count[a] > 1 ? a : a + 1; b < p.item.length; b++) {
                    sums.merge(((long) p.item[a] << 32) | p.item[b], x[j], Double::sum);
                }
            }
        }
        // What whole columns add to a pair does not change how far it is from whole.
        long chosen = -1;
        double best = WHOLE;
        for (Map.Entry<Long, Double> entry : sums.entrySet()) {
            double far = distance(entry.getValue());
            if (far > best + 1e-9 || (far > best - 1e-9 && chosen >= 0 && entry.getKey() < chosen)) {
                best = far;
                chosen = entry.getKey();
            }
        }
        return chosen < 0 ? null : together((int) (chosen >> 32), (int) chosen);
    }

    private Branch together(int a, int b) {
        IntPredicate member = j -> {
            Pattern p = columns.get(j);
            return a == b ? p.countOf(a) > 1 : p.countOf(a) > 0 && p.countOf(b) > 0;
        };
        double sum = 0;
        for (int j = 0; j < x.length; j++) {
            sum += member.test(j) ? x[j] : 0;
        }
        return of(member, sum);
    }

    private @Nullable Branch single() {
        int chosen = -1;
        for (int j = 0; j < x.length; j++) {
            if (!columns.get(j).empty()
                    && distance(x[j]) > 1e-6
                    && (chosen < 0 || distance(x[j]) > distance(x[chosen]))) {
                chosen = j;
            }
        }
        int column = chosen;
        return column < 0 ? null : of(j -> j == column, x[column]);
    }
}
