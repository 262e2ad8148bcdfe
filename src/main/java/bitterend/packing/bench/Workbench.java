package bitterend.packing.bench;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.packing.DrawPrice;
import bitterend.packing.Eligibility;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceKind;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.packing.Urgency;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * A packing problem in numbers that never change: pieces, the jobs they make, runs and reels, each counted from zero. A job
 * is what is planned whole or not at all: a matched set, or a piece by itself. Lengths are in millimetres.
 */
public final class Workbench {
    /** No run, no order, no reel. */
    public static final int NONE = -1;

    /** A reel of an earlier plan that is not there any more. */
    private static final int GONE = -2;

    final PackingProblem problem;
    final int pieces;
    final int runs;
    final int reels;
    /** Pieces of one kind may come off the same runs and take the same of each. */
    final int[] kindOf;

    final int[] urgency;
    final long[] weight;
    final boolean[] pinned;
    /** Pieces of each job, the longest first. */
    final int[][] jobs;

    final int[] jobOf;
    private final long[] sizeOfJob;
    private final long[] weightOfJob;
    final Bond[] bondOf;
    /** Number of the order, or {@link #NONE} where it cannot be split. */
    final int[] orderOf;
    /** Reel of an earlier plan, or {@link #NONE}; any other number that is no reel for one that is not there any more. */
    final int[] earlier;

    final RunId[] runId;
    final int[] reelOf;
    final long[] length;
    final long[] loss;
    final int[] lotOf;
    final int[] ropeOfLot;
    final int[] firstRun;
    final DrawPrice[] draw;
    /** Runs of one number cost the same while nothing is cut from their reels. */
    final int[] alike;
    /** How many pieces each order has. */
    final int[] piecesOfOrder;

    /** What one more lot of an order costs, and a piece on another reel than before, in 1/1000 minor unit. */
    final long splitOrder;

    final long movedPiece;
    private final PlanPrice prices;
    private final Map<String, Integer> numberOfPiece = new HashMap<>();
    private final Map<RunId, Integer> numberOfRun = new HashMap<>();
    private final List<BitSet> isHome = new ArrayList<>();
    private final List<long[]> sizes = new ArrayList<>();
    private final Numbering<List<Long>> sizeNumbers = new Numbering<>();
    private final List<Integer> sizeNumber = new ArrayList<>();
    private final int[] ropeOfReel;
    private final int[] lotOfReel;
    private final Homes asListed;
    private final Homes byId;

    public Workbench(PackingProblem problem) {
        this.problem = problem;
        pieces = problem.pieces().size();
        reels = problem.reels().size();
        prices = new PlanPrice(problem);
        splitOrder = problem.prices().splitOrder().millis();
        movedPiece = problem.prices().movedPiece().millis();
        Numbering<String> ropes = new Numbering<>();
        Numbering<String> lots = new Numbering<>();
        List<Integer> ropeOf = new ArrayList<>();
        draw = new DrawPrice[reels];
        firstRun = new int[reels + 1];
        ropeOfReel = new int[reels];
        lotOfReel = new int[reels];
        for (int r = 0; r < reels; r++) {
            Reel reel = problem.reels().get(r);
            draw[r] = prices.draw(reel.id());
            ropeOfReel[r] = ropes.of(reel.rope());
            lotOfReel[r] = lots.of(PlanPrice.holderOf(Bond.ONE_LOT, reel));
            if (lotOfReel[r] == ropeOf.size()) {
                ropeOf.add(ropeOfReel[r]);
            }
            firstRun[r + 1] = firstRun[r] + draw[r].runs().size();
        }
        ropeOfLot = ropeOf.stream().mapToInt(Integer::intValue).toArray();
        runs = firstRun[reels];
        runId = new RunId[runs];
        reelOf = new int[runs];
        length = new long[runs];
        loss = new long[runs];
        lotOf = new int[runs];
        for (int r = 0; r < reels; r++) {
            for (int run = firstRun[r]; run < firstRun[r + 1]; run++) {
                int place = run - firstRun[r];
                runId[run] = new RunId(problem.reels().get(r).id(), place + 1);
                numberOfRun.put(runId[run], run);
                reelOf[run] = r;
                length[run] = draw[r].runs().get(place).length().mm();
                loss[run] = draw[r].loss().mm();
                lotOf[run] = lotOfReel[r];
            }
        }
        alike = alike();
        kindOf = new int[pieces];
        urgency = new int[pieces];
        weight = new long[pieces];
        pinned = new boolean[pieces];
        orderOf = new int[pieces];
        earlier = new int[pieces];
        piecesOfOrder = readPieces(ropes);
        List<int[]> whole = jobsOf();
        jobs = whole.toArray(int[][]::new);
        jobOf = new int[pieces];
        bondOf = new Bond[jobs.length];
        sizeOfJob = new long[jobs.length];
        weightOfJob = new long[jobs.length];
        for (int j = 0; j < jobs.length; j++) {
            for (int piece : jobs[j]) {
                jobOf[piece] = j;
                sizeOfJob[j] += piece(piece).cut().mm();
                weightOfJob[j] += weight[piece];
            }
            bondOf[j] = piece(jobs[j][0]).matching().bond();
        }
        asListed = Homes.asListed(this);
        byId = Homes.byId(this);
    }

    /** A lot that is one reel's alone is like any other. */
    private int[] alike() {
        int[] reelsOfLot = new int[ropeOfLot.length];
        for (int r = 0; r < reels; r++) {
            reelsOfLot[lotOfReel[r]]++;
        }
        Numbering<Object> numbers = new Numbering<>();
        int[] alike = new int[runs];
        for (int run = 0; run < runs; run++) {
            int r = reelOf[run];
            Reel reel = problem.reels().get(r);
            List<Long> lengths =
                    Arrays.stream(length, firstRun[r], firstRun[r + 1]).boxed().toList();
            alike[run] = numbers.of(List.of(
                    ropeOfReel[r],
                    reelsOfLot[lotOfReel[r]] == 1 ? NONE : lotOfReel[r],
                    lengths,
                    run - firstRun[r],
                    DrawPrice.fixedCost(problem, reel),
                    reel.custody().isCustomersOwn()));
        }
        return alike;
    }

    private int[] readPieces(Numbering<String> ropes) {
        Urgency urgencies = new Urgency(problem);
        Eligibility rules = new Eligibility(problem);
        Map<String, Long> sizeOfOrder =
                problem.pieces().stream().collect(Collectors.groupingBy(Piece::order, Collectors.counting()));
        Map<String, Integer> numberOfReel = new HashMap<>();
        problem.reels().forEach(reel -> numberOfReel.put(reel.id(), numberOfReel.size()));
        Numbering<PieceKind> kinds = new Numbering<>();
        Numbering<String> orderNumbers = new Numbering<>();
        for (int p = 0; p < pieces; p++) {
            Piece piece = piece(p);
            PieceKind kind = rules.kindOf(piece);
            kindOf[p] = kinds.of(kind);
            if (kindOf[p] == sizes.size()) {
                addKind(piece, rules, ropes);
            }
            numberOfPiece.put(piece.id(), p);
            urgency[p] = urgencies.classOf(piece);
            weight[p] = Urgency.weight(piece);
            pinned[p] = kind.isPinned();
            orderOf[p] = sizeOfOrder.getOrDefault(piece.order(), 0L) > 1 ? orderNumbers.of(piece.order()) : NONE;
            String before = problem.earlier().get(piece.id());
            earlier[p] = before == null ? NONE : numberOfReel.getOrDefault(before, GONE);
        }
        int[] piecesOf = new int[orderNumbers.size()];
        IntStream.of(orderOf).filter(order -> order != NONE).forEach(order -> piecesOf[order]++);
        return piecesOf;
    }

    private void addKind(Piece piece, Eligibility rules, Numbering<String> ropes) {
        long[] size = new long[ropes.size()];
        BitSet bits = new BitSet(runs);
        for (int r = 0; r < reels; r++) {
            Reel reel = problem.reels().get(r);
            long cut = piece.lengthOn(reel.rope()).map(there -> there.mm()).orElse(Long.MAX_VALUE);
            size[ropeOfReel[r]] = cut;
            if (cut < Long.MAX_VALUE && rules.allows(piece, reel)) {
                for (int run = firstRun[r]; run < firstRun[r + 1]; run++) {
                    bits.set(run, cut <= length[run]);
                }
            }
        }
        isHome.add(bits);
        sizes.add(size);
        sizeNumber.add(sizeNumbers.of(LongStream.of(size).boxed().toList()));
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
            if (!isHome.get(kindOf[p]).isEmpty()
                    && packing.placeOf(piece(p).id()).isEmpty()) {
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
        Integer number = numberOfPiece.get(piece);
        if (number == null) {
            throw new IllegalArgumentException("no piece " + piece);
        }
        return number;
    }

    /** The number of a run; a run that is not there is a caller's bug. */
    public int numberOf(RunId run) {
        Integer number = numberOfRun.get(run);
        if (number == null) {
            throw new IllegalArgumentException("no " + run);
        }
        return number;
    }

    /** The reel and place of a run. */
    public RunId idOf(int run) {
        return runId[run];
    }

    /** Length of a run. */
    public long length(int run) {
        return length[run];
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
        return kindOf[piece];
    }

    /** Whether a run would take a piece if nothing else were cut there. */
    public boolean isHome(int piece, int run) {
        return isHome.get(kindOf[piece]).get(run);
    }

    /** Cut length of a piece on the rope of a run that is a home of it. */
    public long sizeOn(int piece, int run) {
        return sizes.get(kindOf[piece])[ropeOfReel[reelOf[run]]];
    }

    /** Pieces that are as long as one another on every rope on the rack share a number. */
    int sizeNumber(int piece) {
        return sizeNumber.get(kindOf[piece]);
    }

    /** Rope lost at each cut of a run. */
    public long loss(int run) {
        return loss[run];
    }

    int kinds() {
        return sizes.size();
    }

    /** What the pieces of a job must share: equal numbers on runs of one lot, or of one reel. */
    int holderOf(int job, int run) {
        return bondOf[job] == Bond.ONE_REEL ? reelOf[run] : lotOf[run];
    }

    int ropeOf(int run) {
        return ropeOfReel[reelOf[run]];
    }

    /** The class a job is left undone in, from 1. */
    public int urgencyOf(int job) {
        return urgency[jobs[job][0]];
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
            if (pinned[piece]) {
                return true;
            }
        }
        return false;
    }
}
