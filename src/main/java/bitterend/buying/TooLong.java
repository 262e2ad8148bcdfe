package bitterend.buying;

import bitterend.measure.Cost;

/**
 * A set of reels that is not offered, since its rope lasts longer than it may.
 *
 * @param set the reels
 * @param rope the id of the rope that lasts too long
 * @param tenths tenths of a week that it lasts, rounded up
 * @param saved so much less than the least within the weeks it would cost
 */
public record TooLong(ReelSet set, String rope, long tenths, Cost saved) {}
