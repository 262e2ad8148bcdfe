package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The true optimum of a very small problem, by trying every way to share the pieces out. */
final class Exhaustive {
    private static final long NEVER = Long.MAX_VALUE / 4;

    private final PatternProblem problem;
    /** Item of every single piece. */
    private final List<Integer> pieces = new ArrayList<>();

    private final int masks;

    /** Least weight left out and least cost with it. */
    record Optimum(long weight, long cost) {}

    Exhaustive(PatternProblem problem) {
        this.problem = problem;
        for (int i = 0; i < problem.items().size(); i++) {
            for (int c = 0; c < problem.items().get(i).demand(); c++) {
                pieces.add(i);
            }
        }
        masks = 1 << pieces.size();
    }

    Optimum optimum() {
        long[] least = new long[masks];
        Arrays.fill(least, NEVER);
        least[0] = 0;
        for (ReelKind type : problem.reels()) {
            long[] one = oneReel(type);
            int times = Math.min(type.supply(), pieces.size());
            for (int t = 0; t < times; t++) {
                least = combined(least, one);
            }
        }
        Optimum best = new Optimum(NEVER, NEVER);
        for (int mask = 0; mask < masks; mask++) {
            long out = weightOutside(mask);
            if (least[mask] < NEVER && (out < best.weight() || (out == best.weight() && least[mask] < best.cost()))) {
                best = new Optimum(out, least[mask]);
            }
        }
        return best;
    }

    private long[] combined(long[] least, long[] one) {
        long[] sum = least.clone();
        for (int mask = 1; mask < masks; mask++) {
            for (int sub = mask; sub > 0; sub = (sub - 1) & mask) {
                sum[mask] = Math.min(sum[mask], least[mask ^ sub] + one[sub]);
            }
        }
        return sum;
    }

    private long weightOutside(int mask) {
        long all = 1;
        for (Item item : problem.items()) {
            all += item.demand() * item.weight();
        }
        long sum = 0;
        for (int p = 0; p < pieces.size(); p++) {
            if ((mask >> p & 1) == 0) {
                long own = problem.items().get(pieces.get(p)).weight();
                sum += own == 0 ? all : own;
            }
        }
        return sum;
    }

    /** Least cost of cutting exactly these pieces from one reel. */
    private long[] oneReel(ReelKind type) {
        long[] result = new long[masks];
        Arrays.fill(result, NEVER);
        long[] before = new long[masks];
        Arrays.fill(before, NEVER);
        before[0] = type.opening();
        for (Run run : type.runs()) {
            long[] next = new long[masks];
            for (int mask = 0; mask < masks; mask++) {
                next[mask] = before[mask] + run.handling();
            }
            for (int mask = 1; mask < masks; mask++) {
                for (int sub = mask; sub > 0; sub = (sub - 1) & mask) {
                    long cost = before[mask ^ sub] + drop(type, run, sub);
                    next[mask] = Math.min(next[mask], cost);
                    result[mask] = Math.min(result[mask], cost);
                }
            }
            before = next;
        }
        return result;
    }

    private long drop(ReelKind type, Run run, int sub) {
        long sum = 0;
        int n = 0;
        for (int p = 0; p < pieces.size(); p++) {
            if ((sub >> p & 1) == 1) {
                long length = type.lengths().get(pieces.get(p));
                if (length < 0) {
                    return NEVER;
                }
                sum += length;
                n++;
            }
        }
        if (sum + (n - 1) * type.cutLoss() > run.length()) {
            return NEVER;
        }
        long left = Math.max(0, run.length() - sum - n * type.cutLoss());
        return type.value().applyAsLong(run.length()) - type.value().applyAsLong(left);
    }
}
