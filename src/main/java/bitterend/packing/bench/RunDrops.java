package bitterend.packing.bench;

import bitterend.measure.CommonDivisor;
import bitterend.measure.Length;
import bitterend.packing.DrawPrice;
import bitterend.stock.Reel;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What every load of every run costs, each worked out once. Loads are counted in cells, the common divisor of what the pieces take
 * with their cuts; money is in 1/1000 minor unit.
 */
final class RunDrops {
    /** No more prices than this are kept. */
    private static final int MOST_PRICES = 4_000_000;

    private static final long UNKNOWN = Long.MIN_VALUE;

    /** Cells that each run takes at most. */
    final int[] room;

    private final Workbench bench;
    private final long cell;
    /** Millimetres of the common divisor of cells and runs. */
    private final long step;
    /** By kind of piece and rope. */
    private final int[][] cells;
    /** By run and what is left of it, in steps: its worth, as far as it was asked; runs on the same terms share theirs. */
    private final long[][] worth;

    private final long[] fixed;
    private final long handling;

    private RunDrops(Workbench bench) {
        this.bench = bench;
        cells = new int[bench.kinds()][bench.runTable.ropes];
        cell = divisor();
        countCells();
        step = Arrays.stream(bench.runTable.length).reduce(cell, CommonDivisor::of);
        room = new int[bench.runs];
        for (int run = 0; run < bench.runs; run++) {
            room[run] =
                    (int) Math.min(Integer.MAX_VALUE, (bench.runTable.length[run] + bench.runTable.loss[run]) / cell);
        }
        worth = new long[bench.runs][];
        fixed = new long[bench.reels];
        for (int reel = 0; reel < bench.reels; reel++) {
            fixed[reel] = DrawPrice.fixedCost(bench.problem, reelAt(reel)).millis();
        }
        handling = bench.problem.prices().handling().millis();
    }

    /** All prices; none where reels are so long that there are too many of them to be kept. */
    static Optional<RunDrops> of(Workbench bench) {
        RunDrops drops = new RunDrops(bench);
        Map<List<Object>, Integer> longest = new HashMap<>();
        for (int run = 0; run < bench.runs; run++) {
            longest.merge(
                    drops.terms(run), (int) Math.min(MOST_PRICES, bench.runTable.length[run] / drops.step), Math::max);
        }
        if (longest.values().stream().mapToLong(Integer::longValue).sum() >= MOST_PRICES) {
            return Optional.empty();
        }
        Map<List<Object>, long[]> known = new HashMap<>();
        for (int run = 0; run < bench.runs; run++) {
            int most = longest.getOrDefault(drops.terms(run), 0);
            drops.worth[run] = known.computeIfAbsent(drops.terms(run), terms -> unknown(most));
        }
        return Optional.of(drops);
    }

    private static long[] unknown(int longest) {
        long[] unknown = new long[longest + 1];
        Arrays.fill(unknown, UNKNOWN);
        return unknown;
    }

    private long divisor() {
        long divisor = 0;
        for (int piece = 0; piece < bench.pieces; piece++) {
            for (int run : bench.asListed().of(piece)) {
                divisor = CommonDivisor.of(divisor, sizeWithCut(piece, run));
            }
        }
        return Math.max(1, divisor);
    }

    private void countCells() {
        for (int piece = 0; piece < bench.pieces; piece++) {
            for (int run : bench.asListed().of(piece)) {
                cells[bench.kindOf(piece)][bench.ropeOf(run)] = (int) (sizeWithCut(piece, run) / cell);
            }
        }
    }

    private long sizeWithCut(int piece, int run) {
        return bench.sizeOn(piece, run) + bench.runTable.loss[run];
    }

    private Reel reelAt(int reel) {
        return bench.problem.reels().get(reel);
    }

    private List<Object> terms(int run) {
        Reel reel = reelAt(bench.runTable.reelOf[run]);
        return List.of(reel.rope(), reel.custody().isCustomersOwn());
    }

    /** Cells that a piece and its cut take on a run that is a home of it. */
    int cells(int piece, int run) {
        return cells[bench.kindOf(piece)][bench.ropeOf(run)];
    }

    /** The value that leaves the rack under a load of a run. */
    long drop(int run, int load) {
        long length = bench.runTable.length[run];
        return load == 0
                ? 0
                : worth(run, (int) (length / step)) - worth(run, (int) (Math.max(0, length - load * cell) / step));
    }

    private long worth(int run, int steps) {
        long known = worth[run][steps];
        if (known == UNKNOWN) {
            Reel reel = reelAt(bench.runTable.reelOf[run]);
            known = bench.problem.valueOn(reel).of(new Length(steps * step)).millis();
            worth[run][steps] = known;
        }
        return known;
    }

    /** What the draw of a reel costs beside the value that leaves the rack, by the loads of all runs. */
    long beside(int reel, int[] loads) {
        int first = bench.runTable.firstRun[reel];
        int deepest = bench.runTable.firstRun[reel + 1] - 1;
        while (deepest >= first && loads[deepest] == 0) {
            deepest--;
        }
        long sum = deepest < first ? 0 : fixed[reel];
        for (int run = first; run < deepest; run++) {
            sum += loads[run] == 0 ? handling : 0;
        }
        return sum;
    }
}
