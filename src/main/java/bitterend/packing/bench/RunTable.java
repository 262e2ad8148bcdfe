package bitterend.packing.bench;

import bitterend.demand.Piece.Bond;
import bitterend.packing.DrawPrice;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The reels of a problem and their runs in numbers; ropes and lots are counted as they are met. */
final class RunTable {
    final int reels;
    final int runs;
    /** The first run of each reel, and how many runs there are. */
    final int[] firstRun;

    final DrawPrice[] draw;
    final int[] ropeOfReel;
    final int[] lotOfReel;
    final int[] ropeOfLot;
    final int ropes;
    final RunId[] runId;
    final int[] reelOf;
    final long[] length;
    final long[] loss;
    final int[] lotOf;
    /** Runs of one number cost the same while nothing is cut from their reels. */
    final int[] alike;

    private final PackingProblem problem;
    private final Map<RunId, Integer> numbers = new HashMap<>();

    RunTable(PackingProblem problem, PlanPrice prices) {
        this.problem = problem;
        reels = problem.reels().size();
        firstRun = new int[reels + 1];
        draw = new DrawPrice[reels];
        ropeOfReel = new int[reels];
        lotOfReel = new int[reels];
        Numbering<String> ropeNumbers = new Numbering<>();
        Numbering<String> lotNumbers = new Numbering<>();
        List<Integer> ropeOf = new ArrayList<>();
        for (int r = 0; r < reels; r++) {
            Reel reel = problem.reels().get(r);
            draw[r] = prices.draw(reel.id());
            ropeOfReel[r] = ropeNumbers.of(reel.rope());
            lotOfReel[r] = lotNumbers.of(PlanPrice.holderOf(Bond.ONE_LOT, reel));
            if (lotOfReel[r] == ropeOf.size()) {
                ropeOf.add(ropeOfReel[r]);
            }
            firstRun[r + 1] = firstRun[r] + draw[r].runs().size();
        }
        ropes = ropeNumbers.size();
        ropeOfLot = ropeOf.stream().mapToInt(Integer::intValue).toArray();
        runs = firstRun[reels];
        runId = new RunId[runs];
        reelOf = new int[runs];
        length = new long[runs];
        loss = new long[runs];
        lotOf = new int[runs];
        for (int r = 0; r < reels; r++) {
            readRuns(r);
        }
        alike = alike();
    }

    private void readRuns(int r) {
        for (int run = firstRun[r]; run < firstRun[r + 1]; run++) {
            int place = run - firstRun[r];
            runId[run] = new RunId(problem.reels().get(r).id(), place + 1);
            numbers.put(runId[run], run);
            reelOf[run] = r;
            length[run] = draw[r].runs().get(place).length().mm();
            loss[run] = draw[r].loss().mm();
            lotOf[run] = lotOfReel[r];
        }
    }

    /** A lot that is one reel's alone is like any other. */
    private int[] alike() {
        int[] reelsOfLot = new int[ropeOfLot.length];
        for (int lot : lotOfReel) {
            reelsOfLot[lot]++;
        }
        Map<List<Object>, Integer> firstOfKind = new HashMap<>();
        int[] all = new int[runs];
        for (int r = 0; r < reels; r++) {
            boolean alone = reelsOfLot[lotOfReel[r]] == 1;
            Reel reel = problem.reels().get(r);
            List<Object> kind = List.of(
                    ropeOfReel[r],
                    alone ? Workbench.NONE : lotOfReel[r],
                    Arrays.stream(length, firstRun[r], firstRun[r + 1]).boxed().toList(),
                    DrawPrice.fixedCost(problem, reel),
                    reel.custody().isCustomersOwn());
            firstOfKind.putIfAbsent(kind, firstRun[r]);
            int first = firstOfKind.getOrDefault(kind, firstRun[r]);
            for (int run = firstRun[r]; run < firstRun[r + 1]; run++) {
                all[run] = first + run - firstRun[r];
            }
        }
        return all;
    }

    /** The number of a run; a run that is not there is a caller's bug. */
    int numberOf(RunId run) {
        Integer number = numbers.get(run);
        if (number == null) {
            throw new IllegalArgumentException("no " + run);
        }
        return number;
    }
}
