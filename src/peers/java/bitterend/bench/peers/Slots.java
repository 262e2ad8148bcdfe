package bitterend.bench.peers;

import bitterend.packing.patterns.PatternProblem;
import bitterend.packing.patterns.ReelKind;
import java.util.function.LongUnaryOperator;

/** What the models ask of a kind of reels: loads on the grid of its pieces, and what a load costs. */
final class Slots {
    private final PatternProblem problem;
    private final ReelKind kind;
    private final long grid;

    Slots(PatternProblem problem, ReelKind kind) {
        this.problem = problem;
        this.kind = kind;
        long divisor = 0;
        for (long length : kind.lengths()) {
            divisor = length == ReelKind.NOT_ALLOWED ? divisor : gcd(divisor, length + kind.cutLoss());
        }
        grid = Math.max(1, divisor);
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** Whether an item may come off the run and fits it. */
    boolean takes(int item, int run) {
        return kind.lengths().get(item) != ReelKind.NOT_ALLOWED && load(item) <= capacity(run);
    }

    /** What an item takes with its cut loss, in steps of the grid. */
    long load(int item) {
        return (kind.lengths().get(item) + kind.cutLoss()) / grid;
    }

    /** What a run takes, a cut loss behind the last piece included, in steps of the grid. */
    long capacity(int run) {
        return (kind.runs().get(run).length() + kind.cutLoss()) / grid;
    }

    /** What of that is no whole step, in mm. */
    long odd(int run) {
        return (kind.runs().get(run).length() + kind.cutLoss()) % grid;
    }

    /** The most pieces of an item on a run. */
    long most(int item, int run) {
        return takes(item, run) ? Math.min(problem.items().get(item).demand(), capacity(run) / load(item)) : 0;
    }

    /** What a run is worth with so many steps left of what it takes. */
    long worthOfLeft(int run, long steps) {
        return kind.value().applyAsLong(Math.max(0, steps * grid + odd(run) - kind.cutLoss()));
    }

    /** What a run is worth whole. */
    long worth(int run) {
        return kind.value().applyAsLong(kind.runs().get(run).length());
    }

    /** What leaves the rack under a load; nothing under none. */
    LongUnaryOperator drop(int run) {
        return load -> load == 0 ? 0 : worth(run) - worthOfLeft(run, capacity(run) - load);
    }

    /** Reels of the kind that can be of any use. */
    int reels() {
        long pieces = 0;
        for (int item = 0; item < problem.items().size(); item++) {
            boolean fits = false;
            for (int run = 0; run < kind.runs().size(); run++) {
                fits |= takes(item, run);
            }
            pieces += fits ? problem.items().get(item).demand() : 0;
        }
        return (int) Math.min(pieces, kind.supply());
    }
}
