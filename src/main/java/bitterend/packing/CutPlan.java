package bitterend.packing;

import bitterend.measure.Cost;
import java.time.LocalDate;
import java.util.List;

/**
 * A day's plan: every cut in order, and what could not be planned.
 *
 * @param day the day the rope is cut
 * @param draws the reels that are cut, by reel id
 * @param unplanned pieces without a reel, by piece id
 * @param book where the rope of those reels went
 * @param cost all draws together, and what holds across reels: split orders, moved pieces
 * @param bounds what is proven, a bound for each group of ropes packed together; empty when nothing was proven
 */
public record CutPlan(
        LocalDate day,
        List<ReelDraw> draws,
        List<Unplanned> unplanned,
        LengthBook book,
        Cost cost,
        List<Bound> bounds) {
    public CutPlan {
        draws = List.copyOf(draws);
        unplanned = List.copyOf(unplanned);
        bounds = List.copyOf(bounds);
    }

    /** The same plan with its reels told otherwise: what they give and cost together stays. */
    public CutPlan withDraws(List<ReelDraw> other) {
        return new CutPlan(day, other, unplanned, book, cost, bounds);
    }

    /** The same plan with what is left undone told otherwise. */
    public CutPlan withUnplanned(List<Unplanned> other) {
        return new CutPlan(day, draws, other, book, cost, bounds);
    }

    /** The same plan with other bounds. */
    public CutPlan withBounds(List<Bound> other) {
        return new CutPlan(day, draws, unplanned, book, cost, other);
    }
}
