package bitterend.packing;

import bitterend.measure.Length;
import java.util.List;

/**
 * What happens to one run, in cutting order.
 *
 * @param run 1 for the first run from the working end
 * @param from counter reading where the run begins
 * @param to counter reading where it ends
 * @param cuts the pieces, in cutting order; empty for a run that is cut off whole and put aside
 * @param left sound rope left of the run
 * @param rest what becomes of it
 */
public record RunDraw(int run, Length from, Length to, List<Cut> cuts, Length left, Rest rest) {
    public RunDraw {
        cuts = List.copyOf(cuts);
    }

    /** What becomes of what is left of a run. */
    public enum Rest {
        /** It stays on the reel, with all that lies behind it. */
        ON_REEL,
        /** It comes off as a coil of its own and goes back to the rack. */
        REMNANT,
        /** It is not worth keeping; also when nothing is left. */
        SCRAP
    }
}
