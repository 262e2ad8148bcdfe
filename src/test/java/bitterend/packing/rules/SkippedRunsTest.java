package bitterend.packing.rules;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.packing.Sketch;
import bitterend.packing.model.BenchLayout;
import bitterend.packing.model.PieceToCut;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What is skipped is counted up and down while the search moves pieces; a count from nothing must say the same. */
final class SkippedRunsTest {
    /** One piece on each of the six runs of a reel. */
    private static List<PieceToCut> onEachRun() {
        Sketch sketch = new Sketch()
                .with(reel("K1", 9_000)
                        .flaw(1_000, 1_100)
                        .flaw(2_000, 2_100)
                        .flaw(3_000, 3_100)
                        .flaw(4_000, 4_100)
                        .flaw(5_000, 5_100));
        for (int run = 1; run <= 6; run++) {
            sketch.with(piece("P" + run, 100), "K1", run);
        }
        return new BenchLayout(sketch.problem(), 0).with(sketch.packing()).pieces();
    }

    private static int fromNothing(int[] onRun) {
        int last = onRun.length;
        while (last > 0 && onRun[last - 1] == 0) {
            last--;
        }
        int skipped = 0;
        for (int run = 0; run < last; run++) {
            skipped += onRun[run] == 0 ? 1 : 0;
        }
        return skipped;
    }

    @Test
    void skipped_isTheSameHoweverPiecesCameAndWent() {
        List<PieceToCut> pieces = onEachRun();
        assertEquals(6, pieces.size());
        for (int seed = 0; seed < 50; seed++) {
            SplittableRandom dice = new SplittableRandom(seed);
            SkippedRuns runs = new SkippedRuns();
            SkippedRuns.Count count = runs.supplier().get();
            int[] onRun = new int[6];
            Deque<Runnable> undo = new ArrayDeque<>();
            Deque<Integer> where = new ArrayDeque<>();
            for (int step = 0; step < 60; step++) {
                if (dice.nextInt(3) > 0 || undo.isEmpty()) {
                    PieceToCut piece = pieces.get(dice.nextInt(6));
                    int run = piece.plannedRun().run().index() - 1;
                    undo.push(runs.accumulator().apply(count, piece));
                    where.push(run);
                    onRun[run]++;
                } else {
                    undo.pop().run();
                    onRun[where.pop()]--;
                }
                assertEquals(fromNothing(onRun), runs.finisher().apply(count), "seed " + seed + " step " + step);
            }
        }
    }
}
