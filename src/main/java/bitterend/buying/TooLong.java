package bitterend.buying;

import bitterend.market.Offer;

/**
 * An offer whose single reel lasts longer than rope may.
 *
 * @param offer the offer
 * @param tenths tenths of a week that one reel lasts, rounded down
 * @param piece id of a piece that nothing shorter holds, for which it may be bought all the same; empty when there is none
 */
public record TooLong(Offer offer, long tenths, String piece) {}
