package bitterend.packing;

import bitterend.measure.Cost;

/**
 * What the soft rules cost, each an amount of money of the shop; none negative.
 *
 * @param opening opening a full reel
 * @param changing fetching a reel and putting it back
 * @param handling cutting off one run whole and putting it aside
 * @param splitOrder every lot after the first that an order is spread over, per rope
 * @param movedPiece a piece moved off its reel of an earlier plan
 * @param ageCredit credit per full year on the rack, at most the opening and changing of that reel
 */
public record Prices(Cost opening, Cost changing, Cost handling, Cost splitOrder, Cost movedPiece, Cost ageCredit) {
    public static final Prices NONE = new Prices(Cost.ZERO, Cost.ZERO, Cost.ZERO, Cost.ZERO, Cost.ZERO, Cost.ZERO);

    public Prices {
        for (Cost price : new Cost[] {opening, changing, handling, splitOrder, movedPiece, ageCredit}) {
            if (price.millis() < 0) {
                throw new IllegalArgumentException("a price cannot be negative: " + price);
            }
        }
    }
}
