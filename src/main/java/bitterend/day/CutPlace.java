package bitterend.day;

import bitterend.packing.Arrival;
import bitterend.packing.CutDays;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * Where and when the plan in force cuts a piece.
 *
 * @param plan number of the plan; empty where none cuts it
 * @param reel the reel
 * @param on the day on which that reel is cut; {@link LocalDate#MAX} where it is not known
 * @param isOut whether its sheet is out
 * @param onOrder the order of reels that it comes with, while it is not in the house; else empty
 * @param from the first day on which rope on order is counted on
 */
public record CutPlace(String plan, String reel, LocalDate on, boolean isOut, String onOrder, LocalDate from) {
    /** In no plan. */
    public static final CutPlace NONE = new CutPlace("", "", LocalDate.MAX, false, "", LocalDate.MAX);

    /** Of every piece that a plan cuts, by what it was asked; {@code out} are the reels whose sheets are out, cut on its day. */
    public static Map<String, CutPlace> of(int number, CutPlan plan, PackingProblem problem, Set<String> out) {
        CutDays days = new CutDays(problem);
        Map<String, CutPlace> places = new HashMap<>();
        for (ReelDraw draw : plan.draws()) {
            Arrival arrival = problem.arrivals().get(draw.reel());
            CutPlace place = new CutPlace(
                    Integer.toString(number),
                    draw.reel(),
                    out.contains(draw.reel()) ? plan.day() : days.of(draw),
                    out.contains(draw.reel()),
                    arrival == null ? "" : arrival.order(),
                    arrival == null ? LocalDate.MAX : arrival.from());
            draw.cuts().forEach(cut -> places.put(cut.piece(), place));
        }
        return places;
    }

    /** Of a plan that does not say what it was asked. */
    public static Map<String, CutPlace> of(int number, CutPlan plan) {
        Map<String, CutPlace> places = new HashMap<>();
        plan.draws().forEach(draw -> draw.cuts()
                .forEach(cut -> places.put(
                        cut.piece(),
                        new CutPlace(Integer.toString(number), draw.reel(), plan.day(), false, "", LocalDate.MAX))));
        return places;
    }

    public boolean isPlanned() {
        return !plan.isEmpty();
    }

    /** Whether rope that is still coming is counted on. */
    public boolean isOnOrder() {
        return !onOrder.isEmpty();
    }
}
