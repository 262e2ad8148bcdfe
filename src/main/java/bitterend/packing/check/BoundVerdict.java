package bitterend.packing.check;

import bitterend.measure.Cost;
import bitterend.packing.Undone;
import java.util.List;

/**
 * What the checker says of one bound.
 *
 * @param ropes the ropes it speaks of
 * @param state whether it was confirmed
 * @param sentence the same in words
 * @param confirmed the cost that no plan of these ropes falls below, as far as it was computed again; 0 where nothing was
 * @param least of each class the weight that no plan leaves less of, as far as it was computed again, and only behind
 *     classes of which the plan leaves exactly that
 */
public record BoundVerdict(List<String> ropes, State state, String sentence, Cost confirmed, Undone least) {
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
