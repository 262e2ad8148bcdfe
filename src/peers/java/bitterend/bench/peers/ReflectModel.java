package bitterend.bench.peers;

import bitterend.packing.patterns.Draw;
import bitterend.packing.patterns.PatternProblem;
import bitterend.packing.patterns.ReelKind;
import bitterend.packing.patterns.Take;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.LongUnaryOperator;

/**
 * Flow through half of every reel: runs of all lengths that take the same pieces share their arcs, and each run is left by
 * an arc of its own that reflects at its middle. What is left over is an arc like a piece, the first of its path, and earns
 * what it is worth.
 *
 * <p>After M. Delorme, M. Iori, "Enhanced pseudo-polynomial formulations for bin packing and cutting stock problems",
 * INFORMS Journal on Computing 32 (2020) 101-119. What is left over is worth nothing there.
 */
public final class ReflectModel implements DayModel {
    private final LinearModel model = new LinearModel();
    private final Map<Sharing, List<ReflectSlot>> shared = new LinkedHashMap<>();
    private final List<ReflectGraph> graphs = new ArrayList<>();
    private final PatternProblem problem;
    private int reels;

    /** Runs that may share arcs: the same pieces at the same loads, and the same worth of what is left of the grid. */
    private record Sharing(List<Long> lengths, long cutLoss, LongUnaryOperator value, long odd) {}

    private ReflectModel(PatternProblem problem) {
        this.problem = problem;
        for (int kind = 0; kind < problem.reels().size(); kind++) {
            addKind(kind, problem.reels().get(kind));
        }
    }

    /** The model; none where it would have more arcs than this. */
    public static Optional<ReflectModel> of(PatternProblem problem, int mostArcs) {
        ReflectModel reflect = new ReflectModel(problem);
        List<LinearModel.Row> demand = problem.items().stream()
                .map(item -> reflect.model.exactly(item.demand()))
                .toList();
        int arcs = 0;
        for (List<ReflectSlot> alike : reflect.shared.values()) {
            ReflectGraph graph = new ReflectGraph(problem, alike, reflect.model, mostArcs - arcs);
            if (!graph.build(demand)) {
                return Optional.empty();
            }
            reflect.graphs.add(graph);
            arcs += graph.size();
        }
        return Optional.of(reflect);
    }

    private void addKind(int number, ReelKind kind) {
        Slots numbers = new Slots(problem, kind);
        boolean single = kind.runs().size() == 1;
        int copies = single ? Math.min(1, numbers.reels()) : numbers.reels();
        for (int copy = 0; copy < copies; copy++) {
            List<Opening.Used> used = new ArrayList<>();
            for (int run = 0; run < kind.runs().size(); run++) {
                long price = (single ? kind.opening() : 0) + numbers.worth(run) - numbers.worthOfLeft(run, 0);
                int times = model.variable(single ? numbers.reels() : 1, price);
                used.add(new Opening.Used(0, 1, times));
                ReflectSlot slot = new ReflectSlot(reels, number, run, numbers, times);
                shared.computeIfAbsent(
                                new Sharing(kind.lengths(), kind.cutLoss(), kind.value(), numbers.odd(run)),
                                key -> new ArrayList<>())
                        .add(slot);
            }
            if (!single) {
                Opening.add(model, kind, used);
            }
            reels++;
        }
    }

    @Override
    public LinearModel program() {
        return model;
    }

    @Override
    public List<Draw> draws(long[] values) {
        List<Draw> draws = new ArrayList<>();
        Map<Integer, List<Take>> takesOfReel = new TreeMap<>();
        Map<Integer, Integer> kindOfReel = new TreeMap<>();
        for (ReflectGraph graph : graphs) {
            graph.fillings(values)
                    .forEach((slot, fillings) -> fillings.forEach(items -> {
                        List<Take> takes = takes(slot.run(), items);
                        if (takes.isEmpty()) {
                            return;
                        }
                        if (problem.reels().get(slot.kind()).runs().size() == 1) {
                            draws.add(new Draw(slot.kind(), 1, takes));
                        } else {
                            kindOfReel.put(slot.reel(), slot.kind());
                            takesOfReel
                                    .computeIfAbsent(slot.reel(), reel -> new ArrayList<>())
                                    .addAll(takes);
                        }
                    }));
        }
        takesOfReel.forEach((reel, takes) -> draws.add(new Draw(kindOfReel.getOrDefault(reel, -1), 1, takes)));
        return draws;
    }

    private static List<Take> takes(int run, List<Integer> items) {
        Map<Integer, Integer> counts = new TreeMap<>();
        items.forEach(item -> counts.merge(item, 1, Integer::sum));
        return counts.entrySet().stream()
                .map(count -> new Take(run, count.getKey(), count.getValue()))
                .toList();
    }

    /**
     * A run of a reel, or of each of several reels that are alike.
     *
     * @param reel number of the reel
     * @param kind its kind in the problem
     * @param run place of the run on it
     * @param numbers loads and worth
     * @param times the variable that counts how often it is drawn from
     */
    record ReflectSlot(int reel, int kind, int run, Slots numbers, int times) {
        int capacity() {
            return Math.toIntExact(numbers.capacity(run));
        }
    }
}
