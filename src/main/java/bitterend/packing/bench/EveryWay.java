package bitterend.packing.bench;

import bitterend.packing.Packing;
import bitterend.packing.Undone;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Every way to cut a few pieces, sets among them: the least work undone, and of that the least cost. A way is given up as
 * soon as it leaves more undone than the best known, or as much for no less money. Of reels that are alike and untouched
 * only the first is tried, and pieces that are alike go to runs in order.
 */
public final class EveryWay {
    private static final int NODES_BY_CLOCK = 4_096;

    private final Workbench bench;
    private final RackState rack;
    private final int[] order;
    private final boolean[] asBefore;
    private final int[] twinOf;
    private final boolean[] mustStay;
    private final List<List<int[]>> holders;
    private final long[] undone = new long[Undone.CLASSES];
    private int[] best;
    private Standing bestStanding;
    private final BooleanSupplier over;
    private long nodes;

    private EveryWay(Workbench bench, Packing start, long nodes, BooleanSupplier over) {
        this.bench = bench;
        this.over = over;
        this.nodes = nodes;
        RackState known = RackState.of(bench, start);
        best = known.places();
        bestStanding = Standing.of(known);
        rack = new RackState(bench);
        order = IntStream.range(0, bench.jobs.length)
                .boxed()
                .sorted(Comparator.comparingInt((Integer job) -> bench.pieceTable.urgency[bench.jobs[job][0]])
                        .thenComparing(job -> bench.isSet(job))
                        .thenComparing(job -> -bench.sizeOfJob(job))
                        .thenComparing(job -> bench.pieceTable.kindOf[bench.jobs[job][0]])
                        .thenComparing(job -> bench.pieceTable.orderOf[bench.jobs[job][0]]))
                .mapToInt(Integer::intValue)
                .toArray();
        asBefore = new boolean[order.length];
        mustStay = new boolean[order.length];
        for (int j = 0; j < order.length; j++) {
            asBefore[j] = j > 0 && areAlike(order[j - 1], order[j]);
            mustStay[j] = bench.isPinned(order[j]) && known.isJobPlanned(order[j]);
        }
        twinOf = twins();
        holders = IntStream.of(order)
                .mapToObj(job -> bench.isSet(job) ? bench.asListed().holders(job) : List.<int[]>of())
                .toList();
    }

    /**
     * The best packing found, and whether it is the best there is.
     *
     * @param isBest whether every way was tried within the work allowed
     */
    public record Answer(Packing packing, boolean isBest) {}

    /**
     * The best packing, at least as good as the start.
     *
     * @param nodes partial ways that may be looked at
     * @param over whether time is up
     */
    public static Answer best(Workbench bench, Packing start, long nodes, BooleanSupplier over) {
        EveryWay every = new EveryWay(bench, start, nodes, over);
        every.decide(0);
        return new Answer(RackState.packing(bench, every.best), every.nodes > 0);
    }

    /** Single pieces that differ in their number alone. */
    private boolean areAlike(int one, int other) {
        int a = bench.jobs[one][0];
        int b = bench.jobs[other][0];
        return !bench.isSet(one)
                && !bench.isSet(other)
                && bench.pieceTable.kindOf[a] == bench.pieceTable.kindOf[b]
                && bench.pieceTable.orderOf[a] == bench.pieceTable.orderOf[b]
                && bench.pieceTable.urgency[a] == bench.pieceTable.urgency[b]
                && bench.pieceTable.weight[a] == bench.pieceTable.weight[b]
                && bench.pieceTable.earlier[a] == bench.pieceTable.earlier[b];
    }

    /** Reels of one number are alike while neither is touched. */
    private int[] twins() {
        Numbering<Object> numbers = new Numbering<>();
        return IntStream.range(0, bench.reels)
                .map(r -> numbers.of(signature(r)))
                .toArray();
    }

    private Object signature(int r) {
        int first = bench.runTable.firstRun[r];
        boolean named = IntStream.of(bench.pieceTable.earlier).anyMatch(earlier -> earlier == r);
        if (first == bench.runTable.firstRun[r + 1] || named) {
            return List.of(r);
        }
        BitSet homes = new BitSet();
        for (int p = 0; p < bench.pieces; p++) {
            homes.set(p, bench.isHome(p, first));
        }
        return List.of(bench.runTable.alike[first], homes);
    }

    private void decide(int j) {
        nodes--;
        if (nodes % NODES_BY_CLOCK == 0 && over.getAsBoolean()) {
            nodes = 0;
        }
        if (nodes <= 0 || isHopeless()) {
            return;
        }
        if (j == order.length) {
            weigh();
            return;
        }
        int job = order[j];
        if (bench.isSet(job)) {
            for (int[] holder : holders.get(j)) {
                placeSet(j, 0, holder);
            }
        } else {
            placeOne(j, bench.jobs[job][0]);
        }
        if (!mustStay[j]) {
            leave(job, 1);
            decide(j + 1);
            leave(job, -1);
        }
    }

    private void leave(int job, int sign) {
        undone[bench.pieceTable.urgency[bench.jobs[job][0]] - 1] += sign * bench.weightOfJob(job);
    }

    private void placeOne(int j, int piece) {
        int before = asBefore[j] ? rack.runOf(bench.jobs[order[j - 1]][0]) : 0;
        if (before == Workbench.NONE) {
            return;
        }
        for (int run : bench.asListed().of(piece)) {
            if (run >= before && rack.fits(piece, run) && !isSecondTwin(run)) {
                rack.place(piece, run);
                decide(j + 1);
                rack.remove(piece);
            }
        }
    }

    private void placeSet(int j, int i, int[] holder) {
        int[] set = bench.jobs[order[j]];
        if (i == set.length) {
            decide(j + 1);
            return;
        }
        for (int run : holder) {
            if (nodes > 0 && rack.fits(set[i], run) && !isSecondTwin(run)) {
                rack.place(set[i], run);
                placeSet(j, i + 1, holder);
                rack.remove(set[i]);
            }
        }
    }

    /** Whether an untouched reel before this one, which is untouched too, is like it. */
    private boolean isSecondTwin(int run) {
        int reel = bench.runTable.reelOf[run];
        if (!rack.draws.isUntouched(reel)) {
            return false;
        }
        for (int other = 0; other < reel; other++) {
            if (twinOf[other] == twinOf[reel] && rack.draws.isUntouched(other)) {
                return true;
            }
        }
        return false;
    }

    private boolean isHopeless() {
        return bestStanding.isNoWorseThan(undone, rack.leastMillis());
    }

    private void weigh() {
        Standing standing = Standing.of(rack);
        if (standing.compareTo(bestStanding) < 0) {
            bestStanding = standing;
            best = rack.places();
        }
    }
}
