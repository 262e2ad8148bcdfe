package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** What to branch on: reels of one kind, two pieces in one reel, or at last one pattern. */
final class Branching {
    private static final double WHOLE = 1e-5;

    private final Instance instance;
    private final boolean counted;
    private final List<Pattern> columns;
    private final double[] x;

    Branching(Instance instance, boolean counted, List<Pattern> columns, double[] x) {
        this.instance = instance;
        this.counted = counted;
        this.columns = columns;
        this.x = x;
    }

    /** The most promising ways to branch, best first; of the last resort, one pattern, only where there is no other. */
    List<Branch> candidates(int most) {
        List<Branch> list = new ArrayList<>();
        if (counted) {
            types(list, (most + 1) / 2);
        }
        pairs(list, most - list.size());
        if (list.isEmpty()) {
            single(list);
        }
        return list;
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

    private void types(List<Branch> list, int most) {
        double[] sums = new double[instance.types.length];
        for (int j = 0; j < x.length; j++) {
            if (!columns.get(j).empty()) {
                sums[columns.get(j).type] += x[j];
            }
        }
        IntStream.range(0, sums.length)
                .filter(k -> distance(sums[k]) > WHOLE)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> -distance(sums[k])))
                .limit(most)
                .forEach(type -> list.add(of(j -> columns.get(j).type == type, sums[type])));
    }

    /** What whole columns add to a pair does not change how far it is from whole. */
    private Map<Long, Double> sumsOfPairs() {
        Map<Long, Double> sums = new TreeMap<>();
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
        return sums;
    }

    private void pairs(List<Branch> list, int most) {
        sumsOfPairs().entrySet().stream()
                .filter(entry -> distance(entry.getValue()) > WHOLE)
                .sorted(Comparator.comparingLong(entry -> -Math.round(distance(entry.getValue()) * 1e8)))
                .limit(most)
                .forEach(entry -> list.add(together((int) (entry.getKey() >> 32), (int) (long) entry.getKey())));
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

    private void single(List<Branch> list) {
        int chosen = -1;
        for (int j = 0; j < x.length; j++) {
            if (!columns.get(j).empty()
                    && distance(x[j]) > 1e-6
                    && (chosen < 0 || distance(x[j]) > distance(x[chosen]))) {
                chosen = j;
            }
        }
        int column = chosen;
        if (column >= 0) {
            list.add(of(j -> j == column, x[column]));
        }
    }
}
