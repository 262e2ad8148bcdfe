package bitterend.packing.patterns;

import bitterend.packing.patterns.knapsack.Exact;
import bitterend.packing.patterns.knapsack.ValuedRun;
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

    Instance instance() {
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
            ReelKind type = problem.reels().get(k);
            if (type.supply() == 0 || !holdsAnything(type)) {
                continue;
            }
            Twin twin = new Twin(type.runs(), type.opening(), type.cutLoss(), type.lengths(), type.value());
            twins.computeIfAbsent(twin, unseen -> new ArrayList<>()).add(k);
        }
        List<long[]> kindLoads = new ArrayList<>();
        for (List<Integer> same : twins.values()) {
            kindsBehind.add(List.copyOf(same));
            ReelKind type = problem.reels().get(same.get(0));
            kindLoads.add(loadsOf(type));
        }
        return kindLoads;
    }

    private static boolean holdsAnything(ReelKind type) {
        for (Run run : type.runs()) {
            for (long length : type.lengths()) {
                if (length != ReelKind.NOT_ALLOWED && length <= run.length()) {
                    return true;
                }
            }
        }
        return false;
    }

    private long[] loadsOf(ReelKind type) {
        Map<Long, long[]> byLoss = sameList.computeIfAbsent(
                type.lengths(), list -> loads.computeIfAbsent(list, unseen -> new HashMap<>()));
        return byLoss.computeIfAbsent(type.cutLoss(), loss -> {
            long[] load = new long[type.lengths().size()];
            for (int i = 0; i < load.length; i++) {
                long length = type.lengths().get(i);
                load[i] = length == ReelKind.NOT_ALLOWED ? ReelType.NEVER : length + loss;
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

    private Instance withKinds(int[] demand, long[] weights, List<long[]> kindLoads) {
        IdentityHashMap<long[], long[]> merged = new IdentityHashMap<>();
        IdentityHashMap<long[], Integer> ropes = new IdentityHashMap<>();
        ReelType[] types = new ReelType[kindsBehind.size()];
        for (int k = 0; k < types.length; k++) {
            long[] load = merged.computeIfAbsent(kindLoads.get(k), this::ofMerged);
            Integer known = ropes.get(load);
            int rope = known == null ? ropes.size() : known;
            ropes.put(load, rope);
            types[k] = type(k, load, rope, demand);
        }
        return new Instance(demand, weights, types, ropes.size());
    }

    private long[] ofMerged(long[] load) {
        long[] shorter = new long[itemsBehind.size()];
        for (int i = 0; i < shorter.length; i++) {
            shorter[i] = load[itemsBehind.get(i).get(0)];
        }
        return shorter;
    }

    private ReelType type(int k, long[] load, int rope, int[] demand) {
        ReelKind type = problem.reels().get(kindsBehind.get(k).get(0));
        long divisor = 0;
        for (long each : load) {
            divisor = each == ReelType.NEVER ? divisor : Exact.gcd(divisor, each);
        }
        int useful = lastUsefulRun(type, load);
        ValuedRun[] runs = new ValuedRun[useful + 1];
        long longest = 0;
        for (int r = 0; r <= useful; r++) {
            Run run = type.runs().get(r);
            long cap = Math.floorDiv(run.length() + type.cutLoss(), divisor) * divisor;
            runs[r] = new ValuedRun(run.length(), cap, run.handling(), type.value());
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
        return new ReelType(
                k, (int) Math.min(supply, Integer.MAX_VALUE / 2), limited, type.opening(), runs, load, rope);
    }

    private static int lastUsefulRun(ReelKind type, long[] load) {
        long shortest = ReelType.NEVER;
        for (long each : load) {
            shortest = Math.min(shortest, each);
        }
        int last = 0;
        for (int r = 0; r < type.runs().size(); r++) {
            if (shortest <= type.runs().get(r).length() + type.cutLoss()) {
                last = r;
            }
        }
        return last;
    }
}
