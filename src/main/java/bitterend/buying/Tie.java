package bitterend.buying;

import bitterend.measure.Cost;

/**
 * Two ways to buy rope whose difference in cost lies inside what is unproven: the one that pays less is taken.
 *
 * @param cheaper what would cost less, by the packings that were found
 * @param taken what is taken instead
 * @param difference what it costs more
 * @param unproven so much less another set could cost at the very most
 * @param saved what is paid less
 */
public record Tie(ReelSet cheaper, ReelSet taken, Cost difference, Cost unproven, Cost saved) {}
