package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongUnaryOperator;

/**
 * Brings a problem to its smallest form: cut loss folded into the loads, capacities cut down to the common divisor of
 * the loads, equal items and equal kinds merged, kinds that hold nothing dropped. What it costs to solve follows the
 * number of different lengths, not the number of pieces.
 */
final class Normaliser {
    private final PatternProblem problem;
    /** Loads of one rope by the lists that state them; kinds of one rope share one array. */
    private final Map<List<Long>, Map<Long, long[]>> loads = new HashMap<>();

    private final IdentityHashMap<List<Long>, Map<Long, long[]>> sameList = new IdentityHashMap<>();
    private final long[] weight;
    /** Original items behind each of the task's. */
    final List<List<Integer>> itemsBehind = new ArrayList<>();
    /** Original kinds behind each of the task's. */
    final List<List<Integer>> kindsBehind = new ArrayList<>();

    private record Twin(List<Run> runs, long opening, long cutLoss, List<Long> lengths, LongUnaryOperator value) {}

    Normaliser(PatternProblem problem) {
        this.problem = problem;
        this.weight = effectiveWeights(problem);
    }

    /** An item that must be planned weighs one more than all others together. */
    static long[] effectiveWeights(PatternProblem problem) {
        long all = 1;
        for (Item item : problem.items()) {
            all += item.demand() * item.weight();
        }
        long[] weight = new long[problem.items().size()];
        for (int i = 0; i < weight.length; i++) {
            long own = problem.items().get(i).weight();
            weight[i] = own == Item.MUST ? all : own;
        }
        return weight;
    }

    Task task() {
        List<long[]> kindLoads = mergeKinds();
        mergeItems(kindLoads);
        int m = itemsBehind.size();
        int[] demand = new int[m];
        long[] weights = new long[m];
        for (int i = 0; i < m; i++) {
            for (int original : itemsBehind.get(i)) {
                demand[i] += problem.items().get(original).demand();
            }
            weights[i] = weight[itemsBehind.get(i).get(0)];
        }
        return withKinds(demand, weights, kindLoads);
    }

    private List<long[]> mergeKinds() {
        Map<Twin, List<Integer>> twins = new LinkedHashMap<>();
        for (int k = 0; k < problem.reels().size(); k++) {
            ReelKind kind = problem.reels().get(k);
            if (kind.supply() == 0 || !holdsAnything(kind)) {
                continue;
            }
            Twin twin = new Twin(kind.runs(), kind.opening(), kind.cutLoss(), kind.lengths(), kind.value());
            twins.computeIfAbsent(twin, unseen -> new ArrayList<>()).add(k);
        }
        List<long[]> kindLoads = new ArrayList<>();
        for (List<Integer> same : twins.values()) {
            kindsBehind.add(List.copyOf(same));
            ReelKind kind = problem.reels().get(same.get(0));
            kindLoads.add(loadsOf(kind));
        }
        return kindLoads;
    }

    private static boolean holdsAnything(ReelKind kind) {
        for (Run run : kind.runs()) {
            for (long length : kind.lengths()) {
                if (length != ReelKind.NOT_ALLOWED && length <= run.length()) {
                    return true;
                }
            }
        }
        return false;
    }

    private long[] loadsOf(ReelKind kind) {
        Map<Long, long[]> byLoss = sameList.computeIfAbsent(
                kind.lengths(), list -> loads.computeIfAbsent(list, unseen -> new HashMap<>()));
        return byLoss.computeIfAbsent(kind.cutLoss(), loss -> {
            long[] load = new long[kind.lengths().size()];
            for (int i = 0; i < load.length; i++) {
                long length = kind.lengths().get(i);
                load[i] = length == ReelKind.NOT_ALLOWED ? Kind.NEVER : length + loss;
            }
            return load;
        });
    }

    private void mergeItems(List<long[]> kindLoads) {
        List<long[]> ropes = kindLoads.stream().distinct().toList();
        Map<List<Long>, List<Integer>> same = new LinkedHashMap<>();
        for (int i = 0; i < weight.length; i++) {
            List<Long> key = new ArrayList<>(ropes.size() + 1);
            key.add(weight[i]);
            for (long[] load : ropes) {
                key.add(load[i]);
            }
            same.computeIfAbsent(key, unseen -> new ArrayList<>()).add(i);
        }
        List<List<Integer>> groups = new ArrayList<>(same.values());
        if (!ropes.isEmpty()) {
            long[] first = ropes.get(0);
            groups.sort((a, b) -> Long.compare(first[b.get(0)], first[a.get(0)]));
        }
        itemsBehind.addAll(groups);
    }

    private Task withKinds(int[] demand, long[] weights, List<long[]> kindLoads) {
        IdentityHashMap<long[], long[]> merged = new IdentityHashMap<>();
        IdentityHashMap<long[], Integer> ropes = new IdentityHashMap<>();
        Kind[] kinds = new Kind[kindsBehind.size()];
        for (int k = 0; k < kinds.length; k++) {
            long[] load = merged.computeIfAbsent(kindLoads.get(k), this::ofMerged);
            Integer known = ropes.get(load);
            int rope = known == null ? ropes.size() : known;
            ropes.put(load, rope);
            kinds[k] = kind(k, load, rope, demand);
        }
        return new Task(demand, weights, kinds, ropes.size());
    }

    private long[] ofMerged(long[] load) {
        long[] shorter = new long[itemsBehind.size()];
        for (int i = 0; i < shorter.length; i++) {
            shorter[i] = load[itemsBehind.get(i).get(0)];
        }
        return shorter;
    }

    private Kind kind(int k, long[] load, int rope, int[] demand) {
        ReelKind kind = problem.reels().get(kindsBehind.get(k).get(0));
        long divisor = 0;
        for (long each : load) {
            divisor = each == Kind.NEVER ? divisor : Task.gcd(divisor, each);
        }
        int useful = lastUsefulRun(kind, load);
        Stretch[] runs = new Stretch[useful + 1];
        long longest = 0;
        for (int r = 0; r <= useful; r++) {
            Run run = kind.runs().get(r);
            long cap = Math.floorDiv(run.length() + kind.cutLoss(), divisor) * divisor;
            runs[r] = new Stretch(run.length(), cap, run.handling(), kind.value());
            longest = Math.max(longest, cap);
        }
        long fit = 0;
        for (int i = 0; i < load.length; i++) {
            fit += load[i] <= longest ? demand[i] : 0;
        }
        long supply = 0;
        for (int original : kindsBehind.get(k)) {
            supply += Math.min(fit, problem.reels().get(original).supply());
        }
        boolean limited = supply < fit;
        return new Kind(k, (int) Math.min(supply, Integer.MAX_VALUE / 2), limited, kind.opening(), runs, load, rope);
    }

    private static int lastUsefulRun(ReelKind kind, long[] load) {
        long shortest = Kind.NEVER;
        for (long each : load) {
            shortest = Math.min(shortest, each);
        }
        int last = 0;
        for (int r = 0; r < kind.runs().size(); r++) {
            if (shortest <= kind.runs().get(r).length() + kind.cutLoss()) {
                last = r;
            }
        }
        return last;
    }
}
