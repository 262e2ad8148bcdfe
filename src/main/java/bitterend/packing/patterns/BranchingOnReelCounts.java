package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Branching on how many reels of each kind are used: it changes one dual only, so pricing stays what it is. The lowest
 * bound goes first; now and then a dive looks for a plan.
 *
 * <p>Source: F. Vanderbeck 2000 (see {@link Master}); G. Belov, G. Scheithauer, "A cutting plane algorithm for the
 * one-dimensional cutting stock problem with multiple stock lengths", European Journal of Operational Research 141
 * (2002) 274-294.
 */
final class BranchingOnReelCounts {
    private static final double WHOLE = 1e-5;
    private static final int DIVE_EVERY = 10;
    private static final int PATTERNS = 20_000;

    private final Instance instance;
    private final Pricer pricer;
    private final Rejection rejection;
    private final Incumbent best;
    private final Master base;
    private final Budget budget;
    private final long seed;
    private final PriorityQueue<Node> open = new PriorityQueue<>(
            Comparator.comparingLong((Node node) -> node.bound).thenComparingInt(node -> node.number));
    /** Lowest bound among nodes that cannot be branched any further. */
    private long leaves = Long.MAX_VALUE;

    private int numbers;

    private static final class Node {
        final int[] least;
        final int[] most;
        final long bound;
        final int number;

        Node(int[] least, int[] most, long bound, int number) {
            this.least = least;
            this.most = most;
            this.bound = bound;
            this.number = number;
        }
    }

    BranchingOnReelCounts(
            Instance instance,
            Pricer pricer,
            Rejection rejection,
            Incumbent best,
            Master base,
            long seed,
            Budget budget) {
        this.instance = instance;
        this.pricer = pricer;
        this.rejection = rejection;
        this.best = best;
        this.base = base;
        this.seed = seed;
        this.budget = budget;
    }

    /** Branches until nothing is open, everything open is a leaf, or the nodes or the budget end. */
    void run(int nodes, long root) {
        open.add(new Node(new int[instance.types.length], base.most(), root, numbers++));
        for (int n = 0; n < nodes && !open.isEmpty() && !best.closed(rejection); n++) {
            Node node = open.poll();
            if (node.bound >= best.cutoff(rejection)) {
                open.clear();
                break;
            }
            if (!process(node, n)) {
                open.add(node);
                break;
            }
            raise();
        }
        raise();
    }

    private void raise() {
        long lowest = open.isEmpty() ? leaves : Math.min(leaves, open.peek().bound);
        best.raise(Math.min(lowest, best.cutoff(rejection)), rejection);
    }

    private boolean process(Node node, int n) {
        Master master = base.copy();
        master.counts(node.least, node.most, budget);
        master.solve(best.cutoff(rejection), 400, false, budget);
        if (budget.over()) {
            return false;
        }
        long bound = Math.max(node.bound, instance.roundUp(master.bound().ceiling()));
        List<Master.Share> shares = master.shares();
        List<Pattern> useful = new ArrayList<>();
        shares.forEach(share -> useful.add(share.pattern()));
        base.addAll(useful);
        if (bound >= best.cutoff(rejection)) {
            return true;
        }
        int type = branch(node, bound, shares);
        if (type < 0) {
            leaves = Math.min(leaves, leaf(node, master, bound));
        }
        if (n % DIVE_EVERY == DIVE_EVERY - 1) {
            new Dive(instance, rejection, best, seed + n, 0.02 * (n % 7))
                    .run(master, new PartialPlan(instance), budget);
            base.addAll(best.plan());
        }
        return true;
    }

    /** With all counts whole, what is left is a matter of patterns. */
    private long leaf(Node node, Master master, long bound) {
        new Dive(instance, rejection, best, seed, 0).run(master.copy(), new PartialPlan(instance), budget);
        if (rejection.mode() != Rejection.Mode.NEVER || bound >= best.cutoff(rejection)) {
            return bound;
        }
        Budget part = budget.part(Long.MAX_VALUE, Duration.ofMillis(budget.millisLeft() / 4 + 1));
        long proven =
                new GapClosing(instance, pricer, best, seed, PATTERNS).run(master.bound(), node.least, node.most, part);
        budget.charge(part);
        return Math.max(bound, proven);
    }

    /** Opens both sides of the most broken count; the kind, or -1 when all are whole. */
    private int branch(Node node, long bound, List<Master.Share> shares) {
        double[] used = new double[instance.types.length];
        for (Master.Share share : shares) {
            used[share.pattern().type] += share.value();
        }
        int chosen = -1;
        double far = WHOLE;
        for (int k = 0; k < used.length; k++) {
            double distance = Math.abs(used[k] - Math.rint(used[k]));
            if (distance > far) {
                far = distance;
                chosen = k;
            }
        }
        if (chosen < 0) {
            return -1;
        }
        int floor = (int) Math.floor(used[chosen]);
        int[] most = node.most.clone();
        most[chosen] = floor;
        open.add(new Node(node.least, most, bound, numbers++));
        int[] least = node.least.clone();
        least[chosen] = floor + 1;
        open.add(new Node(least, node.most, bound, numbers++));
        return chosen;
    }
}
