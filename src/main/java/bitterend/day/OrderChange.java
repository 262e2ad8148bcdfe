package bitterend.day;

import bitterend.measure.Length;
import bitterend.stock.Ordered;
import java.util.ArrayList;
import java.util.List;

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
        /** A certificate that its rope does not carry. */
        CERTIFICATE,
        /** The customer's own rope, which it is not of; or not that any more, and it is. */
        OWN_ROPE,
        /** Another way of measuring the same length, for which it is long enough. */
        MEASURING,
        /** Another matched set, or another bond. */
        SET
    }

    /** Whether no order wants the piece. */
    public boolean isUnwanted() {
        return what == What.CANCELLED || what == What.FEWER;
    }

    /** Whether the piece cannot become what is ordered now. */
    public boolean isUseless() {
        return switch (what) {
            case CANCELLED, FEWER, ROPE, TOO_SHORT, CERTIFICATE, OWN_ROPE -> true;
            case LENGTH, ENDS, MEASURING, SET -> false;
        };
    }

    /** What a person who accepts the piece as it is agrees to; of a piece whose terms were not kept, without them. */
    public String accepted() {
        List<String> agreed = new ArrayList<>(List.of(
                now.make().rope(),
                now.make().exactly().finished(),
                now.make().exactly().ends(),
                now.bond().set(),
                now.bond().match()));
        if (was.terms().isKept()) {
            agreed.addAll(List.of(
                    now.terms().certificate(),
                    now.terms().ownRope() ? "own rope" : "",
                    now.terms().measured()));
        }
        return String.join(" | ", agreed);
    }
}
