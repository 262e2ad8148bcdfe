package bitterend.packing;

import bitterend.measure.Length;

/**
 * One piece on a reel. Positions are readings of a counter that stands at zero at the clean end, the lead trim being off.
 *
 * @param piece id of the piece
 * @param from where it begins
 * @param to the mark it is cut at
 */
public record Cut(String piece, Length from, Length to) {
    public Length length() {
        return to.minus(from);
    }
}
