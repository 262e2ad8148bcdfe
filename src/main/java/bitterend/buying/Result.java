package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;

/**
 * What a way to buy came to, in the scenarios that report.
 *
 * @param option the way to buy
 * @param standing how it stands to the chosen one
 * @param byMetre mean cost per useful metre
 * @param usual what nine of ten and one of ten scenarios exceed
 * @param perScenario means of one scenario
 * @param more mean cost of a scenario beyond that of the chosen one; may be negative
 * @param chance standard error of {@code more} from chance
 * @param history standard error of {@code more} from a thin history; negative when it cannot be told
 */
public record Result(
        Option option,
        Standing standing,
        UnitPrice byMetre,
        Range usual,
        Means perScenario,
        Cost more,
        Cost chance,
        Cost history) {

    /**
     * From where to where most scenarios lie.
     *
     * @param low cost per useful metre that nine of ten exceed
     * @param high cost per useful metre that one of ten exceeds
     * @param wasteLow waste as a share of the useful rope that nine of ten exceed
     * @param wasteHigh the same for one of ten
     */
    public record Range(Cost low, Cost high, Ratio wasteLow, Ratio wasteHigh) {}

    /**
     * Means of one scenario.
     *
     * @param useful rope in pieces
     * @param waste rope bought that is neither in pieces nor on the rack
     * @param coilTenths coils on the rack at the end, in tenths
     * @param reelTenths reels bought, in tenths
     * @param gap the most that better packings could have saved, as a share of the worth of the useful rope
     */
    public record Means(Length useful, Length waste, long coilTenths, long reelTenths, Ratio gap) {
        /** Waste as a share of the useful rope. */
        public Ratio wasteShare() {
            return useful.isPositive() ? new Ratio(waste.mm(), useful.mm()) : Ratio.ZERO;
        }
    }

    public boolean isTied() {
        return standing == Standing.TIE || standing == Standing.TIE_OF_THIN_HISTORY;
    }
}
