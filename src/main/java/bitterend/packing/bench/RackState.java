package bitterend.packing.bench;

import bitterend.measure.Length;
import bitterend.packing.Packing;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import bitterend.packing.Undone;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which piece comes off which run, changed piece by piece; what is left undone and what it costs are kept up. */
public final class RackState {
    final Workbench bench;
    private final int[] runOf;
    private final long[] free;
    final Draws draws;
    private final long[] undone = new long[Undone.CLASSES];
    final OrderLots lots;
    private final List<List<Integer>> onRun = new ArrayList<>();
    private long moved;

    /** Nothing is planned. */
    public RackState(Workbench bench) {
        this.bench = bench;
        runOf = new int[bench.pieces];
        Arrays.fill(runOf, Workbench.NONE);
        draws = new Draws(bench);
        free = bench.runTable.length.clone();
        lots = new OrderLots(bench.pieceTable.piecesOfOrder, bench.runTable.ropeOfLot);
        for (int p = 0; p < bench.pieces; p++) {
            undone[bench.pieceTable.urgency[p] - 1] += bench.pieceTable.weight[p];
        }
        for (int run = 0; run < bench.runs; run++) {
            onRun.add(new ArrayList<>());
        }
    }

    /** What a packing says; its pieces and runs are those of the bench. */
    public static RackState of(Workbench bench, Packing packing) {
        RackState rack = new RackState(bench);
        packing.places().forEach((piece, run) -> rack.place(bench.numberOf(piece), bench.numberOf(run)));
        return rack;
    }

    /** The run of a piece, or {@link Workbench#NONE}. */
    public int runOf(int piece) {
        return runOf[piece];
    }

    public boolean isPlanned(int piece) {
        return runOf[piece] != Workbench.NONE;
    }

    public boolean isJobPlanned(int job) {
        return isPlanned(bench.jobs[job][0]);
    }

    /** The pieces on a run, in no order. */
    public List<Integer> onRun(int run) {
        return Collections.unmodifiableList(onRun.get(run));
    }

    /** The longest piece that a run would still take; negative when not even a cut loss is left. */
    public long free(int run) {
        return free[run];
    }

    /** Whether a run would take a piece beside what is cut there. */
    public boolean fits(int piece, int run) {
        return bench.isHome(piece, run) && bench.sizeOn(piece, run) <= free[run];
    }

    /** Whether a run would hold what is cut from another one of the same rope. */
    boolean wouldHold(int run, int other) {
        return bench.runTable.length[other] - free[other] <= bench.runTable.length[run] + bench.runTable.loss[run];
    }

    public void place(int piece, int run) {
        change(piece, run, 1);
        runOf[piece] = run;
        onRun.get(run).add(piece);
        if (bench.pieceTable.orderOf[piece] != Workbench.NONE) {
            lots.add(bench.pieceTable.orderOf[piece], bench.runTable.lotOf[run]);
        }
    }

    public void remove(int piece) {
        int run = runOf[piece];
        change(piece, run, -1);
        runOf[piece] = Workbench.NONE;
        onRun.get(run).remove(Integer.valueOf(piece));
        if (bench.pieceTable.orderOf[piece] != Workbench.NONE) {
            lots.remove(bench.pieceTable.orderOf[piece], bench.runTable.lotOf[run]);
        }
    }

    private void change(int piece, int run, int sign) {
        long size = bench.sizeOn(piece, run);
        RunLoad load = load(run);
        draws.set(run, sign > 0 ? load.plus(new Length(size)) : load.minus(new Length(size)));
        free[run] -= sign * (size + bench.runTable.loss[run]);
        undone[bench.pieceTable.urgency[piece] - 1] -= sign * bench.pieceTable.weight[piece];
        moved += isElsewhere(piece, run) ? sign : 0;
    }

    void removeJob(int job) {
        for (int piece : bench.jobs[job]) {
            remove(piece);
        }
    }

    /** What it costs more with a piece on a run that it fits than with the piece where it is, in 1/1000 minor unit. */
    public long changeMillis(int piece, int run) {
        int now = runOf[piece];
        if (now == Workbench.NONE) {
            return addedMillis(piece, run);
        }
        remove(piece);
        long change = addedMillis(piece, run) - addedMillis(piece, now);
        place(piece, now);
        return change;
    }

    private boolean isElsewhere(int piece, int run) {
        int before = bench.pieceTable.earlier[piece];
        return before != Workbench.NONE && before != bench.runTable.reelOf[run];
    }

    /** What one more piece on a run that it fits adds to the cost, in 1/1000 minor unit. */
    public long addedMillis(int piece, int run) {
        int order = bench.pieceTable.orderOf[piece];
        boolean splits = order != Workbench.NONE && lots.wouldSplit(order, bench.runTable.lotOf[run]);
        return draws.added(piece, run)
                + (splits ? bench.splitOrder : 0)
                + (isElsewhere(piece, run) ? bench.movedPiece : 0);
    }

    /** What these pieces together add to the cost, on a run that they fit, in 1/1000 minor unit. */
    public long addedMillis(int[] pieces, int run) {
        RunLoad then = load(run);
        Set<Integer> split = new HashSet<>();
        long elsewhere = 0;
        for (int piece : pieces) {
            then = then.plus(new Length(bench.sizeOn(piece, run)));
            elsewhere += isElsewhere(piece, run) ? 1 : 0;
            int order = bench.pieceTable.orderOf[piece];
            if (order != Workbench.NONE && lots.wouldSplit(order, bench.runTable.lotOf[run])) {
                split.add(order);
            }
        }
        return draws.growth(run, then) + bench.splitOrder * split.size() + bench.movedPiece * elsewhere;
    }

    /** What is cut from a run. */
    public RunLoad load(int run) {
        return draws.load(run);
    }

    /** What it costs, in 1/1000 minor unit: draws, split orders, moved pieces. */
    public long millis() {
        return draws.millis() + acrossReels();
    }

    /**
     * A cost that no packing with all this planned undercuts: without what is paid for runs that are skipped, since a
     * further piece may spare it.
     */
    long leastMillis() {
        return millis() - draws.skipped() * bench.problem.prices().handling().millis();
    }

    /** What split orders and moved pieces cost, in 1/1000 minor unit. */
    long acrossReels() {
        return lots.splits() * bench.splitOrder + moved * bench.movedPiece;
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

    public Packing packing() {
        return packing(bench, runOf);
    }

    static Packing packing(Workbench bench, int[] places) {
        Map<String, RunId> runs = new HashMap<>();
        for (int p = 0; p < places.length; p++) {
            if (places[p] != Workbench.NONE) {
                runs.put(bench.piece(p).id(), bench.runTable.runId[places[p]]);
            }
        }
        return new Packing(runs);
    }
}
