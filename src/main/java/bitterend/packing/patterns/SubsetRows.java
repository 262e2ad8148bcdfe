package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Cuts from one or three items: half the sum of their rows, rounded up. A pattern that serves two of three pieces
 * counts as one, so three pieces need two.
 */
final class SubsetRows {
    private static final int MOST = 40;
    private static final double VIOLATION = 0.02;

    private final Instance instance;
    private final List<Pattern> columns;
    private final double[] x;
    private final List<Integer> used = new ArrayList<>();
    /** Used columns by item. */
    private final List<List<Integer>> with = new ArrayList<>();

    private static final class Candidate {
        final int[] items;
        final double violation;

        Candidate(int[] items, double violation) {
            this.items = items;
            this.violation = violation;
        }
    }

    SubsetRows(Instance instance, List<Pattern> columns, double[] x) {
        this.instance = instance;
        this.columns = columns;
        this.x = x;
        for (int i = 0; i < instance.items; i++) {
            with.add(new ArrayList<>());
        }
        for (int j = 0; j < x.length; j++) {
            if (x[j] > 1e-6 && !columns.get(j).empty()) {
                used.add(j);
                for (int i : columns.get(j).item) {
                    with.get(i).add(j);
                }
            }
        }
    }

    /** The most violated cuts. */
    List<ValidInequality> violated() {
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < instance.items; i++) {
            consider(candidates, i);
        }
        BitSet[] near = neighbours();
        Set<Long> seen = new HashSet<>();
        for (int a = 0; a < instance.items; a++) {
            for (int b = near[a].nextSetBit(0); b >= 0; b = near[a].nextSetBit(b + 1)) {
                for (int c = near[b].nextSetBit(0); c >= 0; c = near[b].nextSetBit(c + 1)) {
                    int[] triple = {a, b, c};
                    Arrays.sort(triple);
                    if (triple[0] < triple[1]
                            && triple[1] < triple[2]
                            && seen.add(((long) triple[0] << 42) | ((long) triple[1] << 21) | triple[2])) {
                        consider(candidates, triple);
                    }
                }
            }
        }
        candidates.sort(Comparator.comparingDouble((Candidate candidate) -> -candidate.violation));
        List<ValidInequality> cuts = new ArrayList<>();
        int[] shared = new int[instance.items];
        for (Candidate candidate : candidates) {
            if (cuts.size() < MOST && fresh(candidate.items, shared)) {
                cuts.add(cut(candidate));
            }
        }
        return cuts;
    }

    private static boolean fresh(int[] items, int[] shared) {
        for (int i : items) {
            if (shared[i] >= 5) {
                return false;
            }
        }
        for (int i : items) {
            shared[i]++;
        }
        return true;
    }

    private BitSet[] neighbours() {
        BitSet[] near = new BitSet[instance.items];
        for (int i = 0; i < near.length; i++) {
            near[i] = new BitSet();
        }
        for (int j : used) {
            if (Math.abs(x[j] - Math.rint(x[j])) < 1e-6) {
                continue;
            }
            int[] items = columns.get(j).item;
            for (int a : items) {
                for (int b : items) {
                    if (a != b) {
                        near[a].set(b);
                    }
                }
            }
        }
        return near;
    }

    private void consider(List<Candidate> candidates, int... items) {
        int demand = 0;
        for (int i : items) {
            demand += instance.demand[i];
        }
        if (demand % 2 == 0) {
            return;
        }
        double sum = 0;
        for (int t = 0; t < items.length; t++) {
            for (int j : with.get(items[t])) {
                boolean counted = false;
                for (int s = 0; s < t; s++) {
                    counted |= columns.get(j).countOf(items[s]) > 0;
                }
                sum += counted ? 0 : x[j] * half(columns.get(j), items);
            }
        }
        int needed = (demand + 1) / 2;
        double violation = needed - sum;
        if (violation > VIOLATION) {
            candidates.add(new Candidate(items, violation));
        }
    }

    private static int half(Pattern pattern, int[] items) {
        int sum = 0;
        for (int i : items) {
            sum += pattern.countOf(i);
        }
        return (sum + 1) / 2;
    }

    private ValidInequality cut(Candidate candidate) {
        int demand = 0;
        for (int i : candidate.items) {
            demand += instance.demand[i];
        }
        int[] at = new int[columns.size()];
        double[] coefficients = new double[columns.size()];
        int size = 0;
        for (int j = 0; j < columns.size(); j++) {
            int half = columns.get(j).empty() ? 0 : half(columns.get(j), candidate.items);
            if (half > 0) {
                at[size] = j;
                coefficients[size++] = half;
            }
        }
        int rhs = (demand + 1) / 2;
        return new ValidInequality(rhs, Arrays.copyOf(at, size), Arrays.copyOf(coefficients, size));
    }
}
