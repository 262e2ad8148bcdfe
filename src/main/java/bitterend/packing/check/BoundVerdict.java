package bitterend.packing.check;

import java.util.List;

/**
 * What the checker says of one bound.
 *
 * @param ropes the ropes it speaks of
 * @param state whether it was confirmed
 * @param sentence the same in words
 */
public record BoundVerdict(List<String> ropes, State state, String sentence) {
    /** How the sentence of a bound ends when every part of it is confirmed. */
    public static final String CONFIRMED_WHOLE = "bound confirmed";

    public BoundVerdict {
        ropes = List.copyOf(ropes);
    }

    /** Whether a bound holds. */
    public enum State {
        /** The duals prove it: computed again, they give as much or more. */
        CONFIRMED,
        /** The duals do not prove what is claimed, or the claim contradicts the plan. */
        REFUTED,
        /** Too large to compute again. */
        NOT_CHECKED
    }
}
