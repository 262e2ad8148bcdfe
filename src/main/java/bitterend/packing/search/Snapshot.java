package bitterend.packing.search;

import bitterend.packing.model.Bench;
import bitterend.packing.model.MatchedSet;
import bitterend.packing.model.PieceToCut;
import bitterend.packing.model.RunOfReel;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** The bench at one step of the search: what lies on every run, and what may be moved. */
final class Snapshot {
    private final List<PieceToCut> movable;
    private final long[] loads;
    private final int[] firstOn;
    private final PieceToCut[] byRun;
    private final List<PieceToCut> unplanned = new ArrayList<>();

    /** @param movable pieces that no pin fixes and that have a home */
    Snapshot(Bench bench, List<PieceToCut> movable) {
        int runs = bench.runs().size();
        this.movable = movable;
        loads = bench.loads();
        firstOn = new int[runs + 1];
        for (PieceToCut piece : movable) {
            RunOfReel run = piece.getRun();
            if (run == null) {
                unplanned.add(piece);
            } else {
                firstOn[run.number() + 1]++;
            }
        }
        for (int i = 0; i < runs; i++) {
            firstOn[i + 1] += firstOn[i];
        }
        byRun = new PieceToCut[firstOn[runs]];
        int[] next = firstOn.clone();
        for (PieceToCut piece : movable) {
            RunOfReel run = piece.getRun();
            if (run != null) {
                byRun[next[run.number()]++] = piece;
            }
        }
    }

    /** Movable pieces without a run. */
    List<PieceToCut> unplanned() {
        return unplanned;
    }

    PieceToCut anyPiece(Random random) {
        return movable.get(random.nextInt(movable.size()));
    }

    RunOfReel anyHome(PieceToCut piece, Random random) {
        List<RunOfReel> homes = piece.getHomes();
        return homes.get(random.nextInt(homes.size()));
    }

    /** What still fits; see {@link RunOfReel#room}. */
    long free(RunOfReel run) {
        return run.room() - loads[run.number()];
    }

    /** How many movable pieces lie on a run. */
    int count(RunOfReel run) {
        return firstOn[run.number() + 1] - firstOn[run.number()];
    }

    /** The movable piece at a place from 0 on a run. */
    PieceToCut pieceOn(RunOfReel run, int place) {
        return byRun[firstOn[run.number()] + place];
    }

    /** Whether a piece may lie on a run, its set staying together as it is. Says nothing of room. */
    static boolean suits(PieceToCut piece, RunOfReel run) {
        return piece.mayComeOff(run) && (!piece.isMatched() || staysTogether(piece, run));
    }

    private static boolean staysTogether(PieceToCut piece, RunOfReel run) {
        RunOfReel now = piece.getRun();
        MatchedSet set = piece.matchedSet();
        return now != null && set.bondOf(now).equals(set.bondOf(run));
    }

    /** Whether a piece may be taken off the plan by itself. */
    static boolean maySpare(PieceToCut piece) {
        return !piece.isPinned() && !piece.isMatched();
    }
}
