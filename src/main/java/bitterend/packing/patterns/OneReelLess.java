package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import bitterend.packing.patterns.fewest.FewestReels;
import bitterend.packing.patterns.fewest.ReelQuestion;
import bitterend.packing.proof.FewestProof;
import java.util.ArrayList;
import java.util.List;

/** Where the best plan takes just one reel more than the bound, reels of one kind and cut flat: whether one less is enough. */
final class OneReelLess {
    private final Instance instance;
    private final Incumbent best;
    private final long opening;
    private final long step;

    OneReelLess(Instance instance, Incumbent best) {
        this.instance = instance;
        this.best = best;
        opening = instance.types[0].opening;
        long divisor = 0;
        for (long load : instance.types[0].load) {
            divisor = Instance.gcd(divisor, load);
        }
        step = divisor;
    }

    /** Whether this is the question that is left. */
    static boolean isFor(Instance instance, Incumbent best) {
        return instance.classical()
                && best.complete()
                && instance.types[0].opening > 0
                && best.cost() - best.bound() == instance.types[0].opening
                && instance.types[0].runs[0].cap < Integer.MAX_VALUE;
    }

    /** Offers the plan, or raises the bound to what the best one costs. */
    void run(Budget budget) {
        int items = instance.items;
        int[] size = new int[items];
        for (int i = 0; i < items; i++) {
            size[i] = (int) (instance.types[0].load[i] / step);
        }
        int room = (int) (instance.types[0].runs[0].cap / step);
        ReelQuestion question = new ReelQuestion(size, instance.demand, room, (int) (best.cost() / opening) - 1);
        if (!FewestReels.isFor(question)) {
            return;
        }
        FewestReels search = new FewestReels(question);
        search.run(budget);
        if (search.denial().isPresent()) {
            best.deny(inMillimetres(search.denial().get()));
            best.raise(best.cost(), Rejection.NEVER);
        } else if (!search.plan().isEmpty()) {
            best.offer(patterns(search.plan()));
        }
    }

    private FewestProof inMillimetres(FewestProof proof) {
        List<FewestProof.Line> lines = proof.lines().stream()
                .map(line -> new FewestProof.Line(line.size() * step, line.count()))
                .toList();
        return new FewestProof(lines, proof.reels(), proof.root());
    }

    private List<Pattern> patterns(List<int[][]> reels) {
        List<Pattern> patterns = new ArrayList<>();
        for (int[][] reel : reels) {
            int takes = reel[0].length;
            patterns.add(Pattern.of(instance, 0, new int[takes], reel[0], reel[1], takes));
        }
        return patterns;
    }
}
