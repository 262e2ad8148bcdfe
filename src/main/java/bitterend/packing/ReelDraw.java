package bitterend.packing;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import java.time.LocalDate;
import java.util.List;

/**
 * What one reel gives, from the working end to the last run that is touched.
 *
 * @param reel id of the reel
 * @param leadTrim rope cut off first
 * @param runs what happens to each run, in the order in which they come off
 * @param leftOnReel rope left on the reel, inner wraps not counted; zero when the rest is scrap
 * @param book where every millimetre went
 * @param cost what the draw costs: value leaving the rack, opening, changing, handling
 * @param forward the day on which it is cut, where that is before the one its pieces ask for, since the bench has no hours for
 *     them then; {@link LocalDate#MAX} where they say the day
 */
public record ReelDraw(
        String reel,
        Length leadTrim,
        List<RunDraw> runs,
        Length leftOnReel,
        LengthBook book,
        Cost cost,
        LocalDate forward) {
    public ReelDraw {
        runs = List.copyOf(runs);
    }

    /** A reel that is cut on the day that its pieces ask for. */
    public ReelDraw(String reel, Length leadTrim, List<RunDraw> runs, Length leftOnReel, LengthBook book, Cost cost) {
        this(reel, leadTrim, runs, leftOnReel, book, cost, LocalDate.MAX);
    }

    /** The same, cut on an earlier day than its pieces ask for. */
    public ReelDraw broughtForwardTo(LocalDate day) {
        return new ReelDraw(reel, leadTrim, runs, leftOnReel, book, cost, day);
    }

    /** The same rope off a reel by another id. */
    public ReelDraw off(String id) {
        return new ReelDraw(id, leadTrim, runs, leftOnReel, book, cost, forward);
    }

    /** Whether it is cut before the day that its pieces ask for. */
    public boolean isBroughtForward() {
        return !forward.equals(LocalDate.MAX);
    }

    /** The pieces in cutting order. */
    public List<Cut> cuts() {
        return runs.stream().flatMap(run -> run.cuts().stream()).toList();
    }
}
