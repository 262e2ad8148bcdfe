package bitterend.buying.steady;

import bitterend.measure.Length;
import java.util.Arrays;

/**
 * How the demand of a rope runs, as far as its past shows it.
 *
 * @param season whether it follows the week of the year; never with less than a year of history
 * @param growth from one year to the next in 1/1000, 1000 where no trend is shown; never with less than two years
 */
public record DemandShape(boolean season, long growth) {
    /** The same all the year round and from year to year. */
    public static final DemandShape LEVEL = new DemandShape(false, DemandFormula.SAME);

    /** Futures draw the past of so many weeks before and after the same week of the year, at first. */
    public static final int WINDOW = 3;

    public DemandShape {
        if (growth < 1) {
            throw new IllegalArgumentException("growth " + growth);
        }
    }

    /** What a past shows. The same past always shows the same. */
    public static DemandShape of(PastWeeks past) {
        long[] sums = past.sums(Length.ZERO);
        int[] places = new int[sums.length];
        Arrays.setAll(places, past::placeOf);
        boolean trend = DemandFormula.showsTrend(sums);
        return new DemandShape(
                DemandFormula.showsSeason(sums, places),
                trend ? DemandFormula.growth(sums, DemandFormula.ones(sums.length)) : DemandFormula.SAME);
    }

    /** Whether demand rises or falls from year to year. */
    public boolean trend() {
        return growth != DemandFormula.SAME;
    }
}
