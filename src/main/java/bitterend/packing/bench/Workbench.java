package bitterend.packing.bench;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A packing problem in numbers that never change: pieces, the jobs they make, runs and reels, each counted from zero. A job
 * is what is planned whole or not at all: a matched set, or a piece by itself. Lengths are in millimetres.
 */
public final class Workbench {
    /** No run, no order, no reel. */
    public static final int NONE = -1;

    final PackingProblem problem;
    final RunTable runTable;
    final PieceTable pieceTable;
    final int pieces;
    final int runs;
    final int reels;
    /** Pieces of each job, the longest first. */
    final int[][] jobs;

    final int[] jobOf;
    private final long[] sizeOfJob;
    private final long[] weightOfJob;
    final Bond[] bondOf;
    /** What one more lot of an order costs, and a piece on another reel than before, in 1/1000 minor unit. */
    final long splitOrder;

    final long movedPiece;
    private final PlanPrice prices;
    private final Homes asListed;
    private final Homes byId;

    public Workbench(PackingProblem problem) {
        this.problem = problem;
        prices = new PlanPrice(problem);
        splitOrder = problem.prices().splitOrder().millis();
        movedPiece = problem.prices().movedPiece().millis();
        runTable = new RunTable(problem, prices);
        pieceTable = new PieceTable(problem, runTable);
        pieces = problem.pieces().size();
        runs = runTable.runs;
        reels = runTable.reels;
        jobs = jobsOf().toArray(int[][]::new);
        jobOf = new int[pieces];
        bondOf = new Bond[jobs.length];
        sizeOfJob = new long[jobs.length];
        weightOfJob = new long[jobs.length];
        for (int j = 0; j < jobs.length; j++) {
            for (int piece : jobs[j]) {
                jobOf[piece] = j;
                sizeOfJob[j] += piece(piece).cut().mm();
                weightOfJob[j] += pieceTable.weight[piece];
            }
            bondOf[j] = piece(jobs[j][0]).matching().bond();
        }
        asListed = Homes.asListed(this);
        byId = Homes.byId(this);
    }

    private List<int[]> jobsOf() {
        Map<String, List<Integer>> sets = new LinkedHashMap<>();
        List<int[]> all = new ArrayList<>();
        for (int p = 0; p < pieces; p++) {
            if (piece(p).isMatched()) {
                sets.computeIfAbsent(piece(p).matching().set(), name -> new ArrayList<>())
                        .add(p);
            } else {
                all.add(new int[] {p});
            }
        }
        sets.values()
                .forEach(set -> all.add(set.stream()
                        .sorted(Comparator.comparing((Integer p) -> piece(p).cut())
                                .reversed()
                                .thenComparing(p -> piece(p).id()))
                        .mapToInt(Integer::intValue)
                        .toArray()));
        return all;
    }

    /** Whether anything that a packing leaves undone has a run that it might come off. */
    public boolean mayPlanMore(Packing packing) {
        for (int p = 0; p < pieces; p++) {
            if (pieceTable.hasHome(p) && packing.placeOf(piece(p).id()).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** What is packed. */
    public PackingProblem problem() {
        return problem;
    }

    /** The true price of whole packings. */
    public PlanPrice prices() {
        return prices;
    }

    /** How many pieces there are. */
    public int pieces() {
        return pieces;
    }

    /** How many jobs there are. */
    public int jobs() {
        return jobs.length;
    }

    /** How many runs there are. */
    public int runs() {
        return runs;
    }

    /** The runs in the order in which the problem lists them. */
    public Homes asListed() {
        return asListed;
    }

    /** The runs by the ids of their reels. */
    public Homes byId() {
        return byId;
    }

    public Piece piece(int number) {
        return problem.pieces().get(number);
    }

    /** The number of a piece by its id; a piece that is not wanted is a caller's bug. */
    public int numberOf(String piece) {
        return pieceTable.numberOf(piece);
    }

    /** The number of a run; a run that is not there is a caller's bug. */
    public int numberOf(RunId run) {
        return runTable.numberOf(run);
    }

    /** The reel and place of a run. */
    public RunId idOf(int run) {
        return runTable.runId[run];
    }

    /** The pieces of a job, the longest first. */
    public int[] piecesOf(int job) {
        return jobs[job].clone();
    }

    /** The job that a piece is of. */
    public int jobOf(int piece) {
        return jobOf[piece];
    }

    /** Pieces of one number may come off the same runs and take the same of each. */
    public int kindOf(int piece) {
        return pieceTable.kindOf[piece];
    }

    /** Whether a run would take a piece if nothing else were cut there. */
    public boolean isHome(int piece, int run) {
        return pieceTable.isHome(piece, run);
    }

    /** Cut length of a piece on the rope of a run that is a home of it. */
    public long sizeOn(int piece, int run) {
        return pieceTable.sizeOn(piece, ropeOf(run));
    }

    /** Rope lost at each cut of a run. */
    public long loss(int run) {
        return runTable.loss[run];
    }

    int kinds() {
        return pieceTable.kinds();
    }

    /** What the pieces of a job must share: equal numbers on runs of one lot, or of one reel. */
    int holderOf(int job, int run) {
        return bondOf[job] == Bond.ONE_REEL ? runTable.reelOf[run] : runTable.lotOf[run];
    }

    int ropeOf(int run) {
        return runTable.ropeOfReel[runTable.reelOf[run]];
    }

    /** The class a job is left undone in, from 1. */
    public int urgencyOf(int job) {
        return pieceTable.urgency[jobs[job][0]];
    }

    /** Cut lengths of a job together, on the rope that was ordered. */
    public long sizeOfJob(int job) {
        return sizeOfJob[job];
    }

    /** Its weight in its class of urgency. */
    public long weightOfJob(int job) {
        return weightOfJob[job];
    }

    public boolean isSet(int job) {
        return bondOf[job] != Bond.NONE;
    }

    /** Whether a piece of a job is pinned to a reel. */
    public boolean isPinned(int job) {
        for (int piece : jobs[job]) {
            if (pieceTable.pinned[piece]) {
                return true;
            }
        }
        return false;
    }
}
