package bitterend.work.plans;

import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.work.IssuedWork.OnTheBench;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What is to be planned, before it is.
 *
 * @param problem the question as it is put to the engines
 * @param held the same without what is not to be cut ahead while rope is short; asked where that would be cut today
 * @param stock what is planned with
 * @param bench sheets that are issued and not posted
 * @param withdraw whether these are called back and planned anew
 * @param before the plan that the new one is held against; null where there is none
 */
public record DayQuestion(
        PackingProblem problem,
        PackingProblem held,
        Stock stock,
        List<OnTheBench> bench,
        boolean withdraw,
        @Nullable Before before) {
    public DayQuestion {
        bench = List.copyOf(bench);
    }

    /**
     * What is planned with.
     *
     * @param source the file that says what is on the rack
     * @param reels how many reels that are
     * @param cut how many of the ordered pieces are cut already
     * @param stale ropes whose curve in {@code values.json} is not used, since it was learned from the past once
     */
    public record Stock(String source, int reels, int cut, Set<String> stale) {}

    /**
     * An earlier plan.
     *
     * @param plan the plan
     * @param inForce its number when it was held against because it is in force; 0 when it was named
     */
    public record Before(CutPlan plan, int inForce) {}

    public Optional<Before> earlier() {
        return Optional.ofNullable(before);
    }

    Set<String> atTheBench() {
        return piecesOf(bench);
    }

    /** Ids of the pieces of sheets. */
    static Set<String> piecesOf(List<OnTheBench> bench) {
        return bench.stream().flatMap(sheet -> sheet.pieces().stream()).collect(Collectors.toSet());
    }

    /** The sheets that are called back once the new plan is in force. */
    public List<OnTheBench> calledBack() {
        return withdraw ? bench : List.of();
    }
}
