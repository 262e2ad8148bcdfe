package bitterend.packing.model;

import bitterend.packing.Packing;
import bitterend.packing.RunId;
import bitterend.packing.Undone;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/**
 * The day's pieces and the runs of the rack. The score has one hard level, and soft levels of which the first are
 * the weights of what is not planned, class by class, and the last is money in 1/1000 minor unit, the shaping of the
 * search included.
 */
@PlanningSolution
public final class Bench {
    private static final int HARD_LEVELS = 1;
    private static final int MONEY_LEVEL = Undone.CLASSES;
    private static final int SOFT_LEVELS = MONEY_LEVEL + 1;

    /** A hard rule broken once. */
    public static final BendableLongScore ONE_HARD = BendableLongScore.ofHard(HARD_LEVELS, SOFT_LEVELS, 0, 1);

    /** 1/1000 minor unit. */
    public static final BendableLongScore ONE_MILLI =
            BendableLongScore.ofSoft(HARD_LEVELS, SOFT_LEVELS, MONEY_LEVEL, 1);

    @PlanningEntityCollectionProperty
    private List<PieceToCut> pieces;

    @ProblemFactCollectionProperty
    private List<RunOfReel> runs;

    @PlanningScore(bendableHardLevelsSize = HARD_LEVELS, bendableSoftLevelsSize = SOFT_LEVELS)
    private @Nullable BendableLongScore score;

    /** For the solver's clones. */
    @SuppressWarnings("unused")
    private Bench() {
        pieces = List.of();
        runs = List.of();
    }

    Bench(List<PieceToCut> pieces, List<RunOfReel> runs) {
        this.pieces = pieces;
        this.runs = runs;
    }

    public List<PieceToCut> pieces() {
        return pieces;
    }

    public List<RunOfReel> runs() {
        return runs;
    }

    public @Nullable BendableLongScore score() {
        return score;
    }

    /** A unit of weight left undone in a class, from 1. */
    public static BendableLongScore oneUndone(int urgency) {
        return BendableLongScore.ofSoft(HARD_LEVELS, SOFT_LEVELS, urgency - 1, 1);
    }

    /** Whether no hard rule is broken. */
    public static boolean isSound(BendableLongScore score) {
        return score.hardScore(0) == 0;
    }

    /** The work left undone that a score stands for. */
    public static Undone undone(BendableLongScore score) {
        List<Long> weights = new ArrayList<>();
        for (int k = 0; k < Undone.CLASSES; k++) {
            weights.add(-score.softScore(k));
        }
        return Undone.of(weights);
    }

    /** Money and shaping together, in 1/1000 minor unit. */
    public static long softMillis(BendableLongScore score) {
        return -score.softScore(MONEY_LEVEL);
    }

    /** Load of every run by its number; see {@link RunOfReel}. */
    public long[] loads() {
        long[] loads = new long[runs.size()];
        for (PieceToCut piece : pieces) {
            RunOfReel run = piece.getRun();
            if (run != null) {
                loads[run.number()] += piece.sizeOn(run);
            }
        }
        return loads;
    }

    /** The part of the soft score that is not money. */
    public long shapingMillis() {
        long[] loads = loads();
        return runs.stream()
                .mapToLong(run -> run.shapingMillis(loads[run.number()]))
                .sum();
    }

    /** Where every planned piece comes from. */
    public Packing packing() {
        Map<String, RunId> places = new TreeMap<>();
        for (PieceToCut piece : pieces) {
            RunOfReel run = piece.getRun();
            if (run != null) {
                places.put(piece.getId(), run.id());
            }
        }
        return new Packing(places);
    }
}
