package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import bitterend.packing.patterns.fewest.FewestReels;
import bitterend.packing.patterns.fewest.ReelQuestion;
import bitterend.packing.patterns.knapsack.Exact;
import bitterend.packing.proof.FewestProof;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where the best plan takes just one reel more than the bound, reels of one kind and cut flat: whether one less is enough. */
final class OneReelLess {
    /** Steps of a short look for each item: where they are few and long, enumeration is as good and cheaper. */
    private static final long SHORT = 400_000;

    private final Instance instance;
    private final Incumbent best;
    private Optional<FewestReels> begun = Optional.empty();

    OneReelLess(Instance instance, Incumbent best) {
        this.instance = instance;
        this.best = best;
    }

    /** Whether this is the question that is left: the others ask it only then. */
    boolean isLeft() {
        return isBehind(best.bound());
    }

    /**
     * Whether the answer rests on a search that leaves nothing to check: then it is asked once more in cases.
     *
     * @param shown the bound that is shown by prices
     */
    boolean isUnshown(long shown) {
        return isBehind(shown) && best.closed(Rejection.NEVER) && best.denial().isEmpty();
    }

    private boolean isBehind(long bound) {
        return instance.classical()
                && best.complete()
                && instance.types[0].opening > 0
                && best.cost() - bound == instance.types[0].opening
                && instance.types[0].runs[0].cap < Integer.MAX_VALUE;
    }

    /** A short look. */
    void begin(Budget budget) {
        search().ifPresent(fewest -> {
            Budget part = budget.part(SHORT * instance.items);
            fewest.begin(part);
            budget.charge(part);
            take(fewest);
        });
    }

    /** Goes on with it to its end. */
    void run(Budget budget) {
        search().ifPresent(fewest -> {
            fewest.run(budget);
            take(fewest);
        });
    }

    /** The search of the question as it is now; none where its tables would be too large. */
    private Optional<FewestReels> search() {
        int reels = (int) (best.cost() / instance.types[0].opening) - 1;
        if (begun.filter(before -> before.reels() == reels).isEmpty()) {
            ReelQuestion question = question(reels);
            begun = FewestReels.isFor(question) ? Optional.of(new FewestReels(question)) : Optional.empty();
        }
        return begun;
    }

    private ReelQuestion question(int reels) {
        long step = step();
        int[] size = new int[instance.items];
        for (int i = 0; i < size.length; i++) {
            size[i] = (int) (instance.types[0].load[i] / step);
        }
        int room = (int) (instance.types[0].runs[0].cap / step);
        return new ReelQuestion(size, instance.demand, room, reels);
    }

    /** Every load is a multiple of it. */
    private long step() {
        long divisor = 0;
        for (long load : instance.types[0].load) {
            divisor = Exact.gcd(divisor, load);
        }
        return divisor;
    }

    /** Offers the plan, or raises the bound to what the best one costs. */
    private void take(FewestReels fewest) {
        if (fewest.denial().isPresent()) {
            best.deny(inMillimetres(fewest.denial().get()));
            best.raise(best.cost(), Rejection.NEVER);
        } else if (!fewest.plan().isEmpty()) {
            best.offer(patterns(fewest.plan()));
        }
    }

    private FewestProof inMillimetres(FewestProof proof) {
        long step = step();
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
