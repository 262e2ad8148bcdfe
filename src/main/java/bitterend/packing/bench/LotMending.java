package bitterend.packing.bench;

import bitterend.packing.Packing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Brings the pieces of an order together on as few lots as can be: pieces of one length change places, whole runs change
 * their contents, and the one piece of an order that is left alone on a lot looks for a place on another. Goes on until
 * no such trade pays. Never dearer than before, and what is planned stays planned.
 */
public final class LotMending {
    private static final int LOOKS_BY_CLOCK = 256;

    /** Trades weighed at most for each piece. */
    private static final long PATIENCE = 2_000;

    private final Workbench bench;
    private final RackState rack;
    private final Trade trade;
    private final Map<Integer, List<Integer>> bySize = new HashMap<>();
    private final BooleanSupplier over;
    private long trials;
    private long looks;

    private LotMending(Workbench bench, Packing packing, BooleanSupplier over) {
        this.bench = bench;
        this.over = over;
        rack = new RackState(bench);
        trade = new Trade(rack);
        trials = PATIENCE * bench.pieces;
        for (int p = 0; p < bench.pieces; p++) {
            int piece = p;
            packing.placeOf(bench.piece(p).id()).ifPresent(run -> {
                rack.place(piece, bench.numberOf(run));
                bySize.computeIfAbsent(bench.pieceTable.sizeNumber(piece), size -> new ArrayList<>())
                        .add(piece);
            });
        }
    }

    /** A sound packing, mended; it costs no more than before. */
    static Packing mended(Workbench bench, Packing packing) {
        return mended(bench, packing, () -> false);
    }

    /**
     * A sound packing, mended as far as there is time.
     *
     * @param over whether time is up
     */
    public static Packing mended(Workbench bench, Packing packing, BooleanSupplier over) {
        if (bench.splitOrder == 0 || over.getAsBoolean()) {
            return packing;
        }
        LotMending mending = new LotMending(bench, packing, over);
        boolean changed = true;
        while (changed && mending.mayGoOn()) {
            changed = mending.swapEqualPieces();
            changed |= mending.swapRuns();
            changed |= mending.bringStraysHome();
        }
        return mending.rack.packing();
    }

    /** Whether there is patience and time left; the clock is looked at now and then. */
    private boolean mayGoOn() {
        looks++;
        if (looks % LOOKS_BY_CLOCK == 0 && over.getAsBoolean()) {
            trials = 0;
        }
        return trials > 0;
    }

    private boolean swapEqualPieces() {
        boolean changed = false;
        for (int p = 0; p < bench.pieces && mayGoOn(); p++) {
            if (rack.isPlanned(p) && isSplit(p)) {
                for (int other : bySize.getOrDefault(bench.pieceTable.sizeNumber(p), List.of())) {
                    changed |= mayGoOn() && swap(p, other);
                }
            }
        }
        return changed;
    }

    /** Whether the order of a piece takes rope from other lots too. */
    private boolean isSplit(int piece) {
        int order = bench.pieceTable.orderOf[piece];
        return order != Workbench.NONE && rack.lots.isSplit(order, lotOf(piece));
    }

    private int lotOf(int piece) {
        return bench.runTable.lotOf[rack.runOf(piece)];
    }

    private boolean swapRuns() {
        boolean changed = false;
        for (int run = 0; run < bench.runs; run++) {
            boolean worthwhile = !isEmpty(run) && mayGoOn();
            for (int other = 0; worthwhile && other < bench.runs; other++) {
                boolean differ = mayGoOn()
                        && bench.runTable.lotOf[run] != bench.runTable.lotOf[other]
                        && bench.ropeOf(run) == bench.ropeOf(other);
                if (differ && !isEmpty(run) && fit(run, other)) {
                    changed |= swapContents(run, other);
                }
            }
        }
        return changed;
    }

    private boolean isEmpty(int run) {
        return rack.onRun(run).isEmpty();
    }

    /** Runs that are both cut meet twice; once is enough. */
    private boolean fit(int run, int other) {
        boolean once = isEmpty(other) || run < other;
        return once && rack.wouldHold(other, run) && rack.wouldHold(run, other);
    }

    private boolean swapContents(int run, int other) {
        List<Integer> moved = new ArrayList<>(rack.onRun(run));
        int fromRun = moved.size();
        moved.addAll(rack.onRun(other));
        trials -= moved.size();
        return trials > 0
                && trade.make(
                        moved.stream().mapToInt(Integer::intValue).toArray(),
                        IntStream.range(0, moved.size())
                                .map(i -> i < fromRun ? other : run)
                                .toArray());
    }

    private boolean bringStraysHome() {
        boolean changed = false;
        for (int p = 0; p < bench.pieces && mayGoOn(); p++) {
            for (int run = 0; run < bench.runs; run++) {
                if (rack.isPlanned(p) && isStray(p) && isWantedOn(p, run)) {
                    changed |= bringTo(p, run);
                }
            }
        }
        return changed;
    }

    /** Whether it is the only piece of a split order on its lot. */
    private boolean isStray(int piece) {
        int order = bench.pieceTable.orderOf[piece];
        return order != Workbench.NONE && rack.lots.isStray(order, lotOf(piece));
    }

    /** Whether the order of a stray piece takes rope from the lot of a run of the same rope. */
    private boolean isWantedOn(int piece, int run) {
        return rack.lots.uses(bench.pieceTable.orderOf[piece], bench.runTable.lotOf[run])
                && bench.ropeOf(run) == bench.ropeOf(rack.runOf(piece));
    }

    /** Puts a piece on a run as it is, or in the place of another piece. */
    private boolean bringTo(int piece, int run) {
        if (run == rack.runOf(piece)) {
            return false;
        }
        trials--;
        if (trade.make(new int[] {piece}, new int[] {run})) {
            return true;
        }
        for (int other : List.copyOf(rack.onRun(run))) {
            if (swap(piece, other)) {
                return true;
            }
        }
        return false;
    }

    private boolean swap(int one, int other) {
        if (bench.pieceTable.orderOf[one] == bench.pieceTable.orderOf[other]
                || lotOf(one) == lotOf(other)
                || trials <= 0) {
            return false;
        }
        trials--;
        return trade.make(new int[] {one, other}, new int[] {rack.runOf(other), rack.runOf(one)});
    }
}
