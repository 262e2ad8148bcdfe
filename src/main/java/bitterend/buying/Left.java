package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;

/**
 * What is left of reels that are bought, once the orders in hand are cut.
 *
 * @param worth on the rack
 * @param metres of what is worth anything
 * @param coils how many coils and whole reels that is
 */
public record Left(Cost worth, Length metres, int coils) {
    static final Left NONE = new Left(Cost.ZERO, Length.ZERO, 0);

    Left plus(Left other) {
        return new Left(worth.plus(other.worth), metres.plus(other.metres), coils + other.coils);
    }

    Left minus(Left part) {
        return new Left(worth.minus(part.worth), metres.minus(part.metres), coils - part.coils);
    }
}
