package bitterend.day;

import bitterend.packing.CutDays;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.ReelDraw;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a plan made of the promises of the plan before it.
 *
 * @param plan number of the plan before
 * @param kept how many pieces are where that plan had them
 * @param changes every open piece that is planned otherwise
 * @param days every reel that both cut, on different days
 */
public record ChangedSince(int plan, int kept, List<Changes.Change> changes, List<OtherDay> days) {
    public ChangedSince {
        changes = List.copyOf(changes);
        days = List.copyOf(days);
    }

    /**
     * A reel that is cut on another day than promised.
     *
     * @param reel the reel
     * @param was the day it was promised for
     * @param now the day it is cut on now
     * @param pieces how many pieces are cut off it now
     */
    public record OtherDay(String reel, LocalDate was, LocalDate now, int pieces) {}

    /**
     * A plan of a question against the plan before, of what that one was asked.
     *
     * @param stillOpen ids of what is ordered and not cut
     */
    public static ChangedSince of(
            PackingProblem problem,
            CutPlan now,
            int before,
            CutPlan earlier,
            PackingProblem asked,
            Set<String> stillOpen) {
        List<Changes.Change> changes = new Changes(problem, stillOpen).since(earlier, now);
        int planned = now.draws().stream().mapToInt(draw -> draw.cuts().size()).sum();
        long elsewhere =
                changes.stream().filter(change -> !change.now().isEmpty()).count();
        return new ChangedSince(before, planned - (int) elsewhere, changes, days(problem, now, earlier, asked));
    }

    /** Where a sheet is out nothing was promised: its reel is cut as soon as somebody gets to it. */
    private static List<OtherDay> days(PackingProblem problem, CutPlan now, CutPlan earlier, PackingProblem asked) {
        CutDays then = new CutDays(asked);
        Map<String, LocalDate> was = new HashMap<>();
        earlier.draws().forEach(draw -> was.put(draw.reel(), then.of(draw)));
        Set<String> out =
                problem.pins().stream().filter(Pin::isIssued).map(Pin::reel).collect(Collectors.toSet());
        CutDays days = new CutDays(problem);
        return now.draws().stream()
                .filter(draw -> was.containsKey(draw.reel()) && !out.contains(draw.reel()))
                .map(draw -> day(draw, was.getOrDefault(draw.reel(), LocalDate.MAX), days.of(draw)))
                .filter(day -> !day.was().equals(day.now()))
                .toList();
    }

    private static OtherDay day(ReelDraw draw, LocalDate was, LocalDate now) {
        return new OtherDay(draw.reel(), was, now, draw.cuts().size());
    }

    /** How many pieces come off another reel. */
    public int moved() {
        return changes.size() - fresh() - dropped();
    }

    /** How many pieces the plan before did not have. */
    public int fresh() {
        return (int) changes.stream().filter(change -> change.was().isEmpty()).count();
    }

    /** How many pieces are planned no longer. */
    public int dropped() {
        return (int) changes.stream().filter(change -> change.now().isEmpty()).count();
    }

    /** Whether all that was promised is kept, and nothing came in. */
    public boolean isAsPromised() {
        return changes.isEmpty() && days.isEmpty();
    }
}
