package bitterend.stock;

import bitterend.measure.Length;

/**
 * The piece that a movement cut, spoiled or gave away.
 *
 * @param length how long it is, the loss of the cut not included; zero when the movement is about no piece
 * @param ordered what was ordered then
 */
public record PieceCut(Length length, Ordered ordered) {
    public static final PieceCut NONE = new PieceCut(Length.ZERO, Ordered.NONE);

    public PieceCut {
        if (length.isNegative()) {
            throw new IllegalArgumentException("a piece of " + length);
        }
    }
}
