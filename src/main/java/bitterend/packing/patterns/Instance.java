package bitterend.packing.patterns;

import bitterend.packing.patterns.knapsack.Exact;
import bitterend.packing.patterns.knapsack.ValuedRun;

/** A normalised problem: equal items and equal kinds merged, cut loss folded into the loads. */
final class Instance {
    final int items;
    final int[] demand;
    /** Effective weights, at least one each: an item that must be planned outweighs all others. */
    final long[] weight;

    final ReelType[] types;
    /** Every cost is a multiple of it. */
    final long step;
    /** Number of different ropes. */
    final int ropes;

    Instance(int[] demand, long[] weight, ReelType[] types, int ropes) {
        this.items = demand.length;
        this.demand = demand;
        this.weight = weight;
        this.types = types;
        this.ropes = ropes;
        this.step = stepOf(types);
    }

    private static long stepOf(ReelType[] types) {
        long divisor = 0;
        for (ReelType type : types) {
            if (!type.flat()) {
                return 1;
            }
            divisor = Exact.gcd(divisor, type.opening);
            for (ValuedRun run : type.runs) {
                divisor = Exact.gcd(divisor, run.handling);
            }
        }
        return Math.max(1, divisor);
    }

    /** The same pieces and reels, where drawing costs nothing: what remains to be minimised is what is left out. */
    Instance free() {
        ReelType[] free = new ReelType[types.length];
        for (int k = 0; k < free.length; k++) {
            ReelType type = types[k];
            ValuedRun[] runs = new ValuedRun[type.runs.length];
            for (int r = 0; r < runs.length; r++) {
                runs[r] = new ValuedRun(type.runs[r].length, type.runs[r].cap, 0, ReelKind.WORTHLESS);
            }
            free[k] = new ReelType(k, type.supply, type.limited, 0, runs, type.load, type.rope);
        }
        return new Instance(demand, weight, free, ropes);
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
        for (ReelType type : types) {
            dearest = Math.max(dearest, type.dearest());
        }
        return dearest;
    }

    /** Reels of a kind are limited, or there are several kinds. */
    boolean counted() {
        boolean limited = types.length > 1;
        for (ReelType type : types) {
            limited |= type.limited;
        }
        return limited;
    }

    /** A plan never costs more for leaving a piece out: no run has to be paid for when nothing is drawn from it. */
    boolean trimmable() {
        for (ReelType type : types) {
            for (ValuedRun run : type.runs) {
                if (run.handling > 0) {
                    return false;
                }
            }
        }
        return true;
    }

    /** One reel kind without limit, one run, nothing left over is worth anything: the classical problem. */
    boolean classical() {
        return types.length == 1 && types[0].single() && types[0].flat() && !types[0].limited;
    }
}
