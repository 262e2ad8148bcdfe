package bitterend.packing;

import bitterend.measure.Cost;
import bitterend.measure.Length;
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
 */
public record ReelDraw(
        String reel, Length leadTrim, List<RunDraw> runs, Length leftOnReel, LengthBook book, Cost cost) {
    public ReelDraw {
        runs = List.copyOf(runs);
    }

    /** The pieces in cutting order. */
    public List<Cut> cuts() {
        return runs.stream().flatMap(run -> run.cuts().stream()).toList();
    }
}
