package bitterend.packing.strategy;

import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
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
final class LotMending {
    private static final int LOOKS_BY_CLOCK = 256;

    /** Trades weighed at most for each piece. */
    private static final long PATIENCE = 2_000;

    private final CutBench bench;
    private final Map<Integer, List<Integer>> bySize = new HashMap<>();
    private final BooleanSupplier over;
    private long trials;
    private long looks;

    private LotMending(CutBench bench, BooleanSupplier over) {
        this.bench = bench;
        this.over = over;
        trials = PATIENCE * bench.pieces();
        for (int p = 0; p < bench.pieces(); p++) {
            if (bench.isPlanned(p)) {
                bySize.computeIfAbsent(bench.sizeOf(p), size -> new ArrayList<>())
                        .add(p);
            }
        }
    }

    /** A sound packing, mended; it costs no more than before. */
    static Packing mended(PackingProblem problem, PlanPrice prices, Packing packing) {
        return mended(problem, prices, packing, () -> false);
    }

    /**
     * A sound packing, mended as far as there is time.
     *
     * @param over whether time is up
     */
    static Packing mended(PackingProblem problem, PlanPrice prices, Packing packing, BooleanSupplier over) {
        if (problem.prices().splitOrder().millis() == 0 || over.getAsBoolean()) {
            return packing;
        }
        CutBench bench = new CutBench(problem, prices, packing);
        LotMending mending = new LotMending(bench, over);
        boolean changed = true;
        while (changed && mending.mayGoOn()) {
            changed = mending.swapEqualPieces();
            changed |= mending.swapRuns();
            changed |= mending.bringStraysHome();
        }
        return bench.packing();
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
        for (int p = 0; p < bench.pieces() && mayGoOn(); p++) {
            if (bench.isPlanned(p) && bench.isSplit(p)) {
                for (int other : bySize.getOrDefault(bench.sizeOf(p), List.of())) {
                    changed |= mayGoOn() && swap(p, other);
                }
            }
        }
        return changed;
    }

    private boolean swapRuns() {
        boolean changed = false;
        for (CutRun run : bench.runs()) {
            boolean worthwhile = !run.pieces().isEmpty() && mayGoOn();
            for (CutRun other : worthwhile ? bench.runs() : List.<CutRun>of()) {
                boolean differ =
                        mayGoOn() && run.lot() != other.lot() && run.rope().equals(other.rope());
                if (differ && !run.pieces().isEmpty() && fit(run, other)) {
                    changed |= swapContents(run, other);
                }
            }
        }
        return changed;
    }

    /** Runs that are both cut meet twice; once is enough. */
    private static boolean fit(CutRun run, CutRun other) {
        boolean once = other.pieces().isEmpty() || run.number() < other.number();
        return once && other.fits(run.load()) && run.fits(other.load());
    }

    private boolean swapContents(CutRun run, CutRun other) {
        int[] moved = IntStream.concat(
                        run.pieces().stream().mapToInt(Integer::intValue),
                        other.pieces().stream().mapToInt(Integer::intValue))
                .toArray();
        int fromRun = run.pieces().size();
        int[] to = IntStream.range(0, moved.length)
                .map(i -> i < fromRun ? other.number() : run.number())
                .toArray();
        trials -= moved.length;
        return trials > 0 && bench.trade(moved, to);
    }

    private boolean bringStraysHome() {
        boolean changed = false;
        for (int p = 0; p < bench.pieces() && mayGoOn(); p++) {
            for (CutRun run : bench.runs()) {
                boolean stray = bench.isPlanned(p) && bench.isStray(p);
                if (stray
                        && bench.isWantedOn(p, run.lot())
                        && run.rope().equals(bench.runOf(p).rope())) {
                    changed |= bringTo(p, run);
                }
            }
        }
        return changed;
    }

    /** Puts a piece on a run as it is, or in the place of another piece. */
    private boolean bringTo(int piece, CutRun run) {
        if (run == bench.runOf(piece)) {
            return false;
        }
        trials--;
        if (bench.trade(new int[] {piece}, new int[] {run.number()})) {
            return true;
        }
        for (int other : List.copyOf(run.pieces())) {
            if (swap(piece, other)) {
                return true;
            }
        }
        return false;
    }

    private boolean swap(int one, int other) {
        CutRun run = bench.runOf(one);
        CutRun otherRun = bench.runOf(other);
        if (bench.areOfOneOrder(one, other) || run.lot() == otherRun.lot() || trials <= 0) {
            return false;
        }
        trials--;
        return bench.trade(new int[] {one, other}, new int[] {otherRun.number(), run.number()});
    }
}
