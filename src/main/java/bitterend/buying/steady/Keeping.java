package bitterend.buying.steady;

import bitterend.measure.Cost;
import bitterend.measure.Ratio;

/**
 * What the work at the bench and the rope that is there cost.
 *
 * @param loss of a cut in millimetres
 * @param opening of a reel
 * @param changing to another coil or reel
 * @param interest of a year on what was paid for the rope that is there
 * @param room of each coil and reel, for a week
 */
public record Keeping(int loss, Cost opening, Cost changing, Ratio interest, Cost room) {}
