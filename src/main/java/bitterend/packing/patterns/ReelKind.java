package bitterend.packing.patterns;

import java.util.List;
import java.util.function.LongUnaryOperator;

/**
 * Reels that are alike. Pieces with lengths w fit a run of length R when their sum and one cut loss between every two
 * is at most R; what is left is {@code max(0, R - sum - n * cutLoss)} and the run costs {@code V(R) - V(left)}. A reel
 * that is drawn from costs its opening, its drawn runs, and the handling of every undrawn run before the last drawn
 * one; an untouched reel costs nothing.
 *
 * @param runs in the order in which they come off the reel
 * @param supply how many there are, or {@link #UNLIMITED}
 * @param opening price of drawing anything at all
 * @param cutLoss lost at each cut
 * @param lengths of every item on this kind, in the order of the problem's items, or {@link #NOT_ALLOWED}
 * @param value V, never negative, never falling; equal kinds share one object so that they can be merged
 */
public record ReelKind(
        List<Run> runs, int supply, long opening, long cutLoss, List<Long> lengths, LongUnaryOperator value) {
    public static final int UNLIMITED = Integer.MAX_VALUE;
    public static final long NOT_ALLOWED = -1;
    /** What is left is worth nothing: the reel is paid for by its opening. */
    public static final LongUnaryOperator WORTHLESS = left -> 0;

    public ReelKind {
        runs = List.copyOf(runs);
        lengths = List.copyOf(lengths);
        if (supply < 0 || opening < 0 || cutLoss < 0) {
            throw new IllegalArgumentException(
                    "supply, opening and cutLoss must not be negative: " + supply + ", " + opening + ", " + cutLoss);
        }
    }

    /** A whole reel that costs {@code price} however much is drawn from it. */
    public static ReelKind whole(long length, long price, int supply, List<Long> lengths) {
        return new ReelKind(List.of(Run.of(length)), supply, price, 0, lengths, WORTHLESS);
    }
}
