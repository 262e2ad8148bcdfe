package bitterend.packing.model;

import bitterend.packing.Packing;
import bitterend.packing.RunId;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;

/**
 * The day's pieces and the runs of the rack. Soft score is money in 1/1000 minor unit, the shaping of the search
 * included; medium is the weight of what is not planned.
 */
@PlanningSolution
public final class Bench {
    @PlanningEntityCollectionProperty
    private List<PieceToCut> pieces;

    @ProblemFactCollectionProperty
    private List<RunOfReel> runs;

    @PlanningScore
    private @Nullable HardMediumSoftLongScore score;

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

    public @Nullable HardMediumSoftLongScore score() {
        return score;
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
