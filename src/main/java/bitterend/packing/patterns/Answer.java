package bitterend.packing.patterns;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns merged items and kinds back into those of the problem. */
final class Answer {
    private final PatternProblem problem;
    private final Normaliser normaliser;
    private final Instance instance;
    /** Pieces still to hand out, by the task's items. */
    private final List<ArrayDeque<Stock>> pieces = new ArrayList<>();

    private final List<ArrayDeque<Stock>> reels = new ArrayList<>();

    /** So many of an original item or kind are still there. */
    private static final class Stock {
        final int original;
        int left;

        Stock(int original, int left) {
            this.original = original;
            this.left = left;
        }
    }

    private record Key(int type, List<Take> takes) {}

    Answer(PatternProblem problem, Normaliser normaliser, Instance instance) {
        this.problem = problem;
        this.normaliser = normaliser;
        this.instance = instance;
        for (List<Integer> behind : normaliser.itemsBehind) {
            ArrayDeque<Stock> queue = new ArrayDeque<>();
            behind.forEach(i -> queue.add(new Stock(i, problem.items().get(i).demand())));
            pieces.add(queue);
        }
        for (List<Integer> behind : normaliser.kindsBehind) {
            ArrayDeque<Stock> queue = new ArrayDeque<>();
            behind.forEach(k -> queue.add(new Stock(k, problem.reels().get(k).supply())));
            reels.add(queue);
        }
    }

    PatternPlan of(Incumbent best, Solver solver, long work) {
        Map<Key, Integer> draws = new LinkedHashMap<>();
        List<Pattern> plan = new ArrayList<>(best.plan());
        for (Pattern pattern : plan) {
            draws.merge(new Key(one(reels.get(pattern.type), 1).get(0)[0], takes(pattern)), 1, Integer::sum);
        }
        List<Draw> list = new ArrayList<>();
        draws.forEach((key, times) -> list.add(new Draw(key.type(), times, key.takes())));
        return new PatternPlan(
                list,
                unplanned(),
                best.weight(),
                best.cost(),
                best.weightBound(),
                best.bound(),
                proof(solver.root(), solver.rootGiven(), instance.step),
                proof(solver.weightRoot(), 0, 1),
                best.denial(),
                work);
    }

    private List<Take> takes(Pattern pattern) {
        List<Take> takes = new ArrayList<>();
        for (int t = 0; t < pattern.takeItem.length; t++) {
            for (int[] part : one(pieces.get(pattern.takeItem[t]), pattern.takeCount[t])) {
                takes.add(new Take(pattern.run[t], part[0], part[1]));
            }
        }
        return takes;
    }

    /** Hands out so many, as pairs of original and number. */
    private static List<int[]> one(ArrayDeque<Stock> queue, int wanted) {
        List<int[]> parts = new ArrayList<>();
        int left = wanted;
        while (left > 0) {
            Stock first = queue.getFirst();
            int now = Math.min(left, first.left);
            if (now > 0) {
                parts.add(new int[] {first.original, now});
            }
            first.left -= now;
            left -= now;
            if (first.left == 0) {
                queue.removeFirst();
            }
        }
        return parts;
    }

    private List<Integer> unplanned() {
        Integer[] counts = new Integer[problem.items().size()];
        Arrays.fill(counts, 0);
        for (ArrayDeque<Stock> queue : pieces) {
            queue.forEach(stock -> counts[stock.original] = stock.left);
        }
        return List.of(counts);
    }

    private DualProof proof(Bound bound, long given, long step) {
        List<Long> duals = new ArrayList<>(Collections.nCopies(problem.items().size(), 0L));
        for (int i = 0; i < bound.price().length; i++) {
            for (int original : normaliser.itemsBehind.get(i)) {
                duals.set(original, bound.price()[i]);
            }
        }
        long ceiling = Math.multiplyExact(Math.floorDiv(bound.ceiling() + step - 1, step), step);
        return new DualProof(bound.scale(), duals, bound.unplannedPrice(), given, bound.numerator(), ceiling);
    }
}
