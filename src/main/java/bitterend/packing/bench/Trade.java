package bitterend.packing.bench;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Planned pieces change runs, all at once: only if that keeps every hard rule and lowers the price of the plan, or leaves
 * it as it is and brings the pieces of orders closer together. Orders and lots are looked at first, which is cheap.
 */
final class Trade {
    private final Workbench bench;
    private final RackState rack;

    Trade(RackState rack) {
        this.bench = rack.bench;
        this.rack = rack;
    }

    /** Puts pieces on other runs if that is allowed and pays; says whether it was done. */
    boolean make(int[] moved, int[] to) {
        int[] from = Arrays.stream(moved).map(rack::runOf).toArray();
        long splits = rack.lots.splits();
        long closeness = rack.lots.closeness();
        changeLots(moved, from, to);
        splits -= rack.lots.splits();
        boolean closer = rack.lots.closeness() > closeness;
        changeLots(moved, to, from);
        boolean promising = splits > 0 || (splits == 0 && closer);
        return promising && isAllowed(moved, to) && pays(moved, from, to, closer);
    }

    private void changeLots(int[] moved, int[] from, int[] to) {
        for (int i = 0; i < moved.length; i++) {
            int order = bench.pieceTable.orderOf[moved[i]];
            if (order != Workbench.NONE) {
                rack.lots.remove(order, bench.runTable.lotOf[from[i]]);
                rack.lots.add(order, bench.runTable.lotOf[to[i]]);
            }
        }
    }

    /** Whether every piece may come off its run, and sets stay together. */
    private boolean isAllowed(int[] moved, int[] to) {
        for (int i = 0; i < moved.length; i++) {
            int job = bench.jobOf[moved[i]];
            int holder = bench.holderOf(job, to[i]);
            for (int mate : bench.isSet(job) ? bench.jobs[job] : new int[0]) {
                int run = runAfter(mate, moved, to);
                if (run != Workbench.NONE && bench.holderOf(job, run) != holder) {
                    return false;
                }
            }
            if (!bench.isHome(moved[i], to[i])) {
                return false;
            }
        }
        return true;
    }

    private int runAfter(int piece, int[] moved, int[] to) {
        for (int i = 0; i < moved.length; i++) {
            if (moved[i] == piece) {
                return to[i];
            }
        }
        return rack.runOf(piece);
    }

    /** Moves the pieces and keeps that if all fits and the price is right. */
    private boolean pays(int[] moved, int[] from, int[] to, boolean closer) {
        BitSet touched = new BitSet();
        Arrays.stream(from).forEach(run -> touched.set(bench.runTable.reelOf[run]));
        Arrays.stream(to).forEach(run -> touched.set(bench.runTable.reelOf[run]));
        long before = price(touched);
        carry(moved, to);
        boolean fits = Arrays.stream(to).allMatch(run -> rack.free(run) >= -bench.runTable.loss[run]);
        long change = fits ? price(touched) - before : 0;
        if (fits && (change < 0 || (change == 0 && closer))) {
            return true;
        }
        carry(moved, from);
        return false;
    }

    private long price(BitSet touched) {
        return rack.acrossReels()
                + touched.stream().mapToLong(rack.draws::millis).sum();
    }

    private void carry(int[] moved, int[] to) {
        for (int piece : moved) {
            rack.remove(piece);
        }
        for (int i = 0; i < moved.length; i++) {
            rack.place(moved[i], to[i]);
        }
    }
}
