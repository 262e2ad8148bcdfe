package bitterend.day;

import bitterend.measure.Length;
import bitterend.stock.Ordered;

/**
 * A piece that was cut for what is not ordered like that any more.
 *
 * @param piece id of the piece
 * @param what what changed
 * @param was what was ordered when it was cut
 * @param now what is ordered now; {@link Ordered#NONE} when no order wants it
 * @param length how long it is
 * @param needed how long it must be for what is ordered now; zero when no order wants it
 */
public record OrderChange(String piece, What what, Ordered was, Ordered now, Length length, Length needed) {

    /** What changed. */
    public enum What {
        /** The line is gone from the order book. */
        CANCELLED,
        /** The line is there for fewer. */
        FEWER,
        /** Another rope, which the piece is not of. */
        ROPE,
        /** It is too short now. */
        TOO_SHORT,
        /** Another length, for which it is long enough. */
        LENGTH,
        ENDS,
        /** Another matched set, or another bond. */
        SET
    }

    /** Whether no order wants the piece. */
    public boolean isUnwanted() {
        return what == What.CANCELLED || what == What.FEWER;
    }

    /** Whether the piece cannot become what is ordered now. */
    public boolean isUseless() {
        return isUnwanted() || what == What.ROPE || what == What.TOO_SHORT;
    }

    /** What a person who accepts the piece as it is agrees to. */
    public String accepted() {
        return String.join(
                " | ",
                now.make().rope(),
                now.make().exactly().finished(),
                now.make().exactly().ends(),
                now.bond().set(),
                now.bond().match());
    }
}
