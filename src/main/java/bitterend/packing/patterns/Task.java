package bitterend.packing.patterns;

/** A normalised problem: equal items and equal kinds merged, cut loss folded into the loads. */
final class Task {
    final int items;
    final int[] demand;
    /** Effective weights, at least one each: an item that must be planned outweighs all others. */
    final long[] weight;

    final Kind[] kinds;
    /** Every cost is a multiple of it. */
    final long step;
    /** Number of different ropes. */
    final int ropes;

    Task(int[] demand, long[] weight, Kind[] kinds, int ropes) {
        this.items = demand.length;
        this.demand = demand;
        this.weight = weight;
        this.kinds = kinds;
        this.ropes = ropes;
        this.step = stepOf(kinds);
    }

    private static long stepOf(Kind[] kinds) {
        long divisor = 0;
        for (Kind kind : kinds) {
            if (!kind.flat()) {
                return 1;
            }
            divisor = gcd(divisor, kind.opening);
            for (Stretch run : kind.runs) {
                divisor = gcd(divisor, run.handling);
            }
        }
        return Math.max(1, divisor);
    }

    static long gcd(long a, long b) {
        while (b != 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        return a;
    }

    /** The same pieces and reels, where drawing costs nothing: what remains to be minimised is what is left out. */
    Task free() {
        Kind[] free = new Kind[kinds.length];
        for (int k = 0; k < free.length; k++) {
            Kind kind = kinds[k];
            Stretch[] runs = new Stretch[kind.runs.length];
            for (int r = 0; r < runs.length; r++) {
                runs[r] = new Stretch(kind.runs[r].length, kind.runs[r].cap, 0, ReelKind.WORTHLESS);
            }
            free[k] = new Kind(k, kind.supply, kind.limited, 0, runs, kind.load, kind.rope);
        }
        return new Task(demand, weight, free, ropes);
    }

    /** The weight of leaving out this many of each. */
    long weightOf(int[] unplanned) {
        long sum = 0;
        for (int i = 0; i < items; i++) {
            sum += unplanned[i] * weight[i];
        }
        return sum;
    }

    /** Rounds up to what a cost can be. */
    long roundUp(long cost) {
        return Math.multiplyExact(Math.floorDiv(cost + step - 1, step), step);
    }

    int pieces() {
        int sum = 0;
        for (int d : demand) {
            sum += d;
        }
        return sum;
    }

    /** The most that one reel of any kind can cost, at least 1. */
    long dearest() {
        long dearest = 1;
        for (Kind kind : kinds) {
            dearest = Math.max(dearest, kind.dearest());
        }
        return dearest;
    }

    /** Reels of a kind are limited, or there are several kinds. */
    boolean counted() {
        boolean limited = kinds.length > 1;
        for (Kind kind : kinds) {
            limited |= kind.limited;
        }
        return limited;
    }

    /** A plan never costs more for leaving a piece out: no run has to be paid for when nothing is drawn from it. */
    boolean trimmable() {
        for (Kind kind : kinds) {
            for (Stretch run : kind.runs) {
                if (run.handling > 0) {
                    return false;
                }
            }
        }
        return true;
    }

    /** One reel kind without limit, one run, nothing left over is worth anything: the classical problem. */
    boolean classical() {
        return kinds.length == 1 && kinds[0].single() && kinds[0].flat() && !kinds[0].limited;
    }
}
