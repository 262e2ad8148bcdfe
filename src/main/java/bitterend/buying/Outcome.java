package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;

/**
 * What one way to buy came to in one scenario.
 *
 * @param cost price and freight of the reels bought and the work at the bench, less the value on the rack at the end
 * @param waste rope bought that is neither in pieces nor on the rack at the end
 * @param coils on the rack at the end
 * @param reels bought
 * @param avoidable of the cost, the most that better packings of the weeks could have saved; nothing proven counts in full
 */
public record Outcome(Cost cost, Length waste, int coils, int reels, Cost avoidable) {}
