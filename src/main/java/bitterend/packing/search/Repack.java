package bitterend.packing.search;

import bitterend.packing.model.PieceToCut;
import bitterend.packing.model.RunOfReel;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Empties a badly filled run and one to four others and fills them again, taking in up to three unplanned pieces. */
final class Repack implements MoveKind {
    private static final int OTHERS = 4;
    private static final int TAKEN_IN = 3;
    private static final int CANDIDATES = 3;
    private static final int UNTOUCHED_IN = 4;

    private final int nodes;

    Repack(int nodes) {
        this.nodes = nodes;
    }

    @Override
    public @Nullable PlaceMove draw(Snapshot bench, Random random) {
        RunOfReel bad = badlyFilled(bench, random);
        if (bad == null) {
            return null;
        }
        List<RunOfReel> runs = others(bench, bad, random);
        Refilling refilling = new Refilling(nodes);
        refilling.empty(bench, bad);
        runs.forEach(run -> refilling.empty(bench, run));
        takeIn(bench, refilling, random);
        if (refilling.pool().size() < 2) {
            return null;
        }
        order(refilling.pool(), bad, random);
        runs.add(random.nextInt(3) == 0 ? random.nextInt(runs.size() + 1) : runs.size(), bad);
        runs.forEach(refilling::fill);
        return refilling.move();
    }

    /** Of some runs that are cut, the one with the largest share of room left. */
    private static @Nullable RunOfReel badlyFilled(Snapshot bench, Random random) {
        RunOfReel worst = null;
        for (int i = 0; i < CANDIDATES; i++) {
            RunOfReel run = bench.anyPiece(random).getRun();
            if (run != null && (worst == null || emptiness(bench, run) > emptiness(bench, worst))) {
                worst = run;
            }
        }
        return worst;
    }

    /** Share of room left, in thousandths. */
    private static long emptiness(Snapshot bench, RunOfReel run) {
        return 1000 * bench.free(run) / run.room();
    }

    private static List<RunOfReel> others(Snapshot bench, RunOfReel bad, Random random) {
        List<RunOfReel> others = new ArrayList<>();
        int wanted = 1 + random.nextInt(OTHERS);
        for (int i = 0; i < wanted; i++) {
            PieceToCut piece = bench.anyPiece(random);
            RunOfReel run = random.nextInt(UNTOUCHED_IN) == 0 ? bench.anyHome(piece, random) : piece.getRun();
            if (run != null && run != bad && !others.contains(run)) {
                others.add(run);
            }
        }
        return others;
    }

    private static void takeIn(Snapshot bench, Refilling refilling, Random random) {
        List<PieceToCut> open = bench.unplanned();
        for (int i = 0; i < TAKEN_IN && !open.isEmpty(); i++) {
            PieceToCut piece = open.get(random.nextInt(open.size()));
            if (!piece.isMatched() && !refilling.pool().contains(piece)) {
                refilling.add(piece);
            }
        }
    }

    /** Longest first, or now and then by chance, so that the same runs can be filled in another way. */
    private static void order(List<PieceToCut> pool, RunOfReel like, Random random) {
        if (random.nextInt(3) == 0) {
            Collections.shuffle(pool, random);
        } else {
            pool.sort(Comparator.comparingLong((PieceToCut piece) -> piece.sizeOn(like))
                    .reversed());
        }
    }
}
