package bitterend.bench.peers;

import bitterend.bench.peers.ReflectModel.ReflectSlot;
import bitterend.packing.patterns.PatternProblem;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The arcs that runs of several lengths share, and those by which each is left. Nodes are loads from the end of a run. */
final class ReflectGraph {
    /** In place of an item: what is left over. */
    private static final int LEFT_OVER = -1;

    private final PatternProblem problem;
    private final List<ReflectSlot> slots;
    private final Slots numbers;
    private final LinearModel model;
    private final int mostArcs;
    private final List<Integer> items;
    private final int longest;
    private final List<Arc> arcs = new ArrayList<>();
    private final Map<Integer, LinearModel.Row> balance = new HashMap<>();
    private final List<LinearModel.Row> reflected = new ArrayList<>();
    private final LinearModel.Row leftOver;

    /**
     * An arc.
     *
     * @param from the node it leaves
     * @param to the node it comes to, or where it is met from the other end of the run
     * @param item the piece it stands for, or {@link #LEFT_OVER}
     * @param slot the run it is reflected in; -1 for none
     * @param variable how often it is used
     */
    private record Arc(int from, int to, int item, int slot, int variable) {}

    ReflectGraph(PatternProblem problem, List<ReflectSlot> slots, LinearModel model, int mostArcs) {
        this.problem = problem;
        this.slots = slots;
        this.model = model;
        this.mostArcs = mostArcs;
        numbers = slots.get(0).numbers();
        longest = slots.stream().mapToInt(ReflectSlot::capacity).max().orElseThrow();
        items = IntStream.range(0, problem.items().size())
                .filter(item -> slots.stream().anyMatch(slot -> slot.numbers().takes(item, slot.run())))
                .boxed()
                .sorted(Comparator.comparingLong(numbers::load).reversed())
                .toList();
        leftOver = model.atMost(0);
        for (ReflectSlot slot : slots) {
            reflected.add(model.exactly(0).plus(-1, slot.times()));
            leftOver.plus(-1, slot.times());
        }
    }

    /** Adds all arcs; false where there are too many. */
    boolean build(List<LinearModel.Row> demand) {
        boolean[] reached = new boolean[longest / 2 + 1];
        reached[0] = true;
        addLeftOver(reached);
        for (int item : items) {
            if (!addItem(item, reached, demand.get(item))) {
                return false;
            }
        }
        return true;
    }

    /** How many arcs there are. */
    int size() {
        return arcs.size();
    }

    private void addLeftOver(boolean[] reached) {
        boolean[] sums = sums();
        for (int left = 1; left < longest; left++) {
            boolean inside = false;
            for (int s = 0; s < slots.size(); s++) {
                int rest = slots.get(s).capacity() - left;
                if (rest > 0 && sums[rest]) {
                    if (rest > left) {
                        inside = true;
                    } else {
                        arc(0, rest, LEFT_OVER, s, variableOfLeft(left));
                    }
                }
            }
            if (inside) {
                arc(0, left, LEFT_OVER, -1, variableOfLeft(left));
                reached[left] = true;
            }
        }
    }

    private int variableOfLeft(int left) {
        ReflectSlot any = slots.get(0);
        long worth = numbers.worthOfLeft(any.run(), left) - numbers.worthOfLeft(any.run(), 0);
        int variable = model.variable(
                problem.items().stream().mapToInt(item -> item.demand()).sum(), -worth);
        leftOver.plus(1, variable);
        return variable;
    }

    /** Every load that pieces may add up to. */
    private boolean[] sums() {
        boolean[] sums = new boolean[longest + 1];
        sums[0] = true;
        for (int item : items) {
            int load = Math.toIntExact(numbers.load(item));
            int[] used = new int[longest + 1];
            for (int sum = load; sum <= longest; sum++) {
                if (!sums[sum] && sums[sum - load] && used[sum - load] < demand(item)) {
                    sums[sum] = true;
                    used[sum] = used[sum - load] + 1;
                }
            }
        }
        return sums;
    }

    private int demand(int item) {
        return problem.items().get(item).demand();
    }

    private boolean addItem(int item, boolean[] reached, LinearModel.Row demand) {
        int load = Math.toIntExact(numbers.load(item));
        int[] used = new int[reached.length];
        for (int node = 0; node < reached.length; node++) {
            if (!reached[node] || used[node] >= demand(item)) {
                continue;
            }
            int to = node + load;
            if (2L * to <= longest) {
                demand.plus(1, arc(node, to, item, -1, model.variable(demand(item), 0)));
                if (!reached[to]) {
                    reached[to] = true;
                    used[to] = used[node] + 1;
                }
            }
            for (int s = 0; s < slots.size(); s++) {
                int capacity = slots.get(s).capacity();
                if (2L * node < capacity && 2L * to >= capacity && to <= capacity) {
                    demand.plus(1, arc(node, capacity - to, item, s, model.variable(demand(item), 0)));
                }
            }
            if (arcs.size() > mostArcs) {
                return false;
            }
        }
        return true;
    }

    private int arc(int from, int to, int item, int slot, int variable) {
        arcs.add(new Arc(from, to, item, slot, variable));
        if (from > 0 && from == to) {
            balance(from).plus(-2, variable);
        } else {
            if (from > 0) {
                balance(from).plus(-1, variable);
            }
            if (to > 0) {
                balance(to).plus(slot < 0 ? 1 : -1, variable);
            }
        }
        if (slot >= 0) {
            reflected.get(slot).plus(1, variable);
        }
        return variable;
    }

    private LinearModel.Row balance(int node) {
        return balance.computeIfAbsent(node, any -> model.exactly(0));
    }

    /** A path that is not at its end: its pieces. */
    private record Path(List<Integer> items) {
        Path plus(int item) {
            List<Integer> longer = new ArrayList<>(items);
            if (item != LEFT_OVER) {
                longer.add(item);
            }
            return new Path(longer);
        }
    }

    /** The pieces of every run that is drawn from. */
    Map<ReflectSlot, List<List<Integer>>> fillings(long[] values) {
        Map<Integer, ArrayDeque<Path>> waiting = new HashMap<>();
        Map<Arc, List<Path>> turned = new LinkedHashMap<>();
        List<Arc> used = arcs.stream()
                .filter(arc -> values[arc.variable()] > 0)
                .sorted(Comparator.comparingInt(Arc::from))
                .toList();
        for (Arc arc : used) {
            for (long n = 0; n < values[arc.variable()]; n++) {
                Path path = arc.from() == 0 ? new Path(List.of()) : next(waiting, arc.from());
                if (arc.slot() < 0) {
                    waiting.computeIfAbsent(arc.to(), node -> new ArrayDeque<>())
                            .add(path.plus(arc.item()));
                } else {
                    turned.computeIfAbsent(arc, any -> new ArrayList<>()).add(path.plus(arc.item()));
                }
            }
        }
        Map<ReflectSlot, List<List<Integer>>> fillings = new LinkedHashMap<>();
        turned.forEach((arc, paths) -> paths.forEach(path -> {
            List<Integer> all = new ArrayList<>(path.items());
            all.addAll(arc.to() == 0 ? List.of() : next(waiting, arc.to()).items());
            fillings.computeIfAbsent(slots.get(arc.slot()), slot -> new ArrayList<>())
                    .add(all);
        }));
        return fillings;
    }

    private static Path next(Map<Integer, ArrayDeque<Path>> waiting, int node) {
        ArrayDeque<Path> paths = waiting.get(node);
        if (paths == null || paths.isEmpty()) {
            throw new IllegalStateException("no path comes to " + node);
        }
        return paths.removeFirst();
    }
}
