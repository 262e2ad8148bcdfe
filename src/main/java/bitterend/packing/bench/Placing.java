package bitterend.packing.bench;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Packing;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import bitterend.packing.Undone;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which piece comes off which run, changed piece by piece; what is left undone and what it costs are kept up. */
final class Placing {
    final Workbench bench;
    private final int[] runOf;
    private final RunLoad[][] loads;
    private final long[] free;
    private final long[] drawMillis;
    private final boolean[] stale;
    private final long[] undone = new long[Undone.CLASSES];
    private final OrderLots lots;
    private final List<List<Integer>> onRun = new ArrayList<>();
    private long moved;

    /** Nothing is planned. */
    Placing(Workbench bench) {
        this.bench = bench;
        runOf = new int[bench.pieces];
        Arrays.fill(runOf, Workbench.NONE);
        loads = new RunLoad[bench.reels][];
        drawMillis = new long[bench.reels];
        stale = new boolean[bench.reels];
        for (int r = 0; r < bench.reels; r++) {
            loads[r] = new RunLoad[bench.firstRun[r + 1] - bench.firstRun[r]];
            Arrays.fill(loads[r], RunLoad.NONE);
        }
        free = bench.length.clone();
        lots = new OrderLots(bench.orders, bench.ropeOfLot);
        for (int p = 0; p < bench.pieces; p++) {
            undone[bench.urgency[p] - 1] += bench.weight[p];
        }
        for (int run = 0; run < bench.runs; run++) {
            onRun.add(new ArrayList<>());
        }
    }

    static Placing of(Workbench bench, Packing packing) {
        Placing placing = new Placing(bench);
        Map<RunId, Integer> numbers = new HashMap<>();
        for (int run = 0; run < bench.runs; run++) {
            numbers.put(bench.runId[run], run);
        }
        packing.places()
                .forEach((piece, run) ->
                        placing.place(bench.numberOf(piece), numbers.getOrDefault(run, Workbench.NONE)));
        return placing;
    }

    int runOf(int piece) {
        return runOf[piece];
    }

    boolean isPlanned(int piece) {
        return runOf[piece] != Workbench.NONE;
    }

    boolean isJobPlanned(int job) {
        return isPlanned(bench.jobs[job][0]);
    }

    /** The pieces on a run, in no order. */
    List<Integer> onRun(int run) {
        return onRun.get(run);
    }

    boolean isUntouched(int reel) {
        for (RunLoad load : loads[reel]) {
            if (!load.isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** The longest piece that a run would still take. */
    long free(int run) {
        return free[run];
    }

    boolean fits(int piece, int run) {
        return bench.isHome(piece, run) && bench.sizeOn(piece, run) <= free[run];
    }

    void place(int piece, int run) {
        change(piece, run, 1);
        runOf[piece] = run;
        onRun.get(run).add(piece);
        if (bench.orderOf[piece] != Workbench.NONE) {
            lots.add(bench.orderOf[piece], bench.lotOf[run]);
        }
    }

    void remove(int piece) {
        int run = runOf[piece];
        change(piece, run, -1);
        runOf[piece] = Workbench.NONE;
        onRun.get(run).remove(Integer.valueOf(piece));
        if (bench.orderOf[piece] != Workbench.NONE) {
            lots.remove(bench.orderOf[piece], bench.lotOf[run]);
        }
    }

    private void change(int piece, int run, int sign) {
        int reel = bench.reelOf[run];
        int place = run - bench.firstRun[reel];
        long size = bench.sizeOn(piece, run);
        RunLoad load = loads[reel][place];
        loads[reel][place] = sign > 0 ? load.plus(new Length(size)) : load.minus(new Length(size));
        free[run] -= sign * (size + bench.loss[run]);
        stale[reel] = true;
        undone[bench.urgency[piece] - 1] -= sign * bench.weight[piece];
        boolean elsewhere = bench.earlier[piece] != Workbench.NONE && bench.earlier[piece] != reel;
        moved += elsewhere ? sign : 0;
    }

    void removeJob(int job) {
        for (int piece : bench.jobs[job]) {
            remove(piece);
        }
    }

    /** What one more piece on a run that it fits adds to the cost, in 1/1000 minor unit. */
    long addedMillis(int piece, int run) {
        int reel = bench.reelOf[run];
        int place = run - bench.firstRun[reel];
        RunLoad now = loads[reel][place];
        loads[reel][place] = now.plus(new Length(bench.sizeOn(piece, run)));
        long then = bench.draw[reel].of(loads[reel]).millis();
        loads[reel][place] = now;
        int order = bench.orderOf[piece];
        boolean splits = order != Workbench.NONE && lots.wouldSplit(order, bench.lotOf[run]);
        boolean moves = bench.earlier[piece] != Workbench.NONE && bench.earlier[piece] != reel;
        return then
                - drawMillis(reel)
                + (splits ? bench.problem.prices().splitOrder().millis() : 0)
                + (moves ? bench.problem.prices().movedPiece().millis() : 0);
    }

    private long drawMillis(int reel) {
        if (stale[reel]) {
            drawMillis[reel] = bench.draw[reel].of(loads[reel]).millis();
            stale[reel] = false;
        }
        return drawMillis[reel];
    }

    /** What it costs, in 1/1000 minor unit: draws, split orders, moved pieces. */
    long millis() {
        long sum = lots.splits() * bench.problem.prices().splitOrder().millis()
                + moved * bench.problem.prices().movedPiece().millis();
        for (int r = 0; r < bench.reels; r++) {
            sum += drawMillis(r);
        }
        return sum;
    }

    /**
     * A cost that no packing with all this planned undercuts: without what is paid for runs that are skipped, since a
     * further piece may spare it.
     */
    long leastMillis() {
        long sum = lots.splits() * bench.problem.prices().splitOrder().millis()
                + moved * bench.problem.prices().movedPiece().millis();
        for (int r = 0; r < bench.reels; r++) {
            sum += leastMillis(r);
        }
        return sum;
    }

    private long leastMillis(int reel) {
        RunLoad[] load = loads[reel];
        Cost skipped = Cost.ZERO;
        int deepest = load.length - 1;
        while (deepest >= 0 && load[deepest].isEmpty()) {
            deepest--;
        }
        for (int run = 0; run < deepest; run++) {
            skipped = load[run].isEmpty() ? skipped.plus(bench.problem.prices().handling()) : skipped;
        }
        return deepest < 0 ? 0 : bench.draw[reel].of(load).minus(skipped).millis();
    }

    /** How much rope is left in long runs rather than short ones: the sum of the squares, in square centimetres. */
    long rope() {
        long sum = 0;
        for (long left : free) {
            long centimetres = left / 10;
            sum += centimetres * centimetres;
        }
        return sum;
    }

    /** Weight left undone in a class from 1. */
    long undoneIn(int urgency) {
        return undone[urgency - 1];
    }

    long[] undone() {
        return undone.clone();
    }

    int[] places() {
        return runOf.clone();
    }

    /** Puts every piece where it was. */
    void restore(int[] places) {
        for (int p = 0; p < places.length; p++) {
            if (runOf[p] != places[p] && isPlanned(p)) {
                remove(p);
            }
        }
        for (int p = 0; p < places.length; p++) {
            if (runOf[p] != places[p]) {
                place(p, places[p]);
            }
        }
    }

    Packing packing() {
        return packing(bench, runOf);
    }

    static Packing packing(Workbench bench, int[] places) {
        Map<String, RunId> runs = new HashMap<>();
        for (int p = 0; p < places.length; p++) {
            if (places[p] != Workbench.NONE) {
                runs.put(bench.piece(p).id(), bench.runId[places[p]]);
            }
        }
        return new Packing(runs);
    }
}
