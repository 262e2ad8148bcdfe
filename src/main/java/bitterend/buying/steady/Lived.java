package bitterend.buying.steady;

import bitterend.measure.Cost;
import bitterend.measure.Length;

/**
 * What one way to buy came to in the weeks that were measured of one future.
 *
 * @param cost paid for reels that came, work at the bench, interest and room, less what the rack gained in worth
 * @param used cut lengths of the pieces that were cut
 * @param pieces that were ordered
 * @param late of them those for which there was no rope in the week of their order
 * @param stock what was on the rack at the end of a week, on the average, rounded down
 * @param tied what was paid for that, on the average, rounded down
 * @param reels that came
 * @param scrap what was neither used nor kept, with the loss of cuts
 * @param coils on the rack at the end
 */
public record Lived(
        Cost cost, Length used, int pieces, int late, Length stock, Cost tied, int reels, Length scrap, int coils) {}
