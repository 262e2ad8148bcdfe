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
 * @param open each part of it that was not computed again, in words
 * @param confirmed the cost that no plan of these ropes falls below, as far as it was computed again; 0 where nothing was
 * @param least of each class the weight that no plan leaves less of, as far as it was computed again, and only behind
 *     classes of which the plan leaves exactly that
 */
public record BoundVerdict(
        List<String> ropes, State state, String sentence, List<String> open, Cost confirmed, Undone least) {
    public BoundVerdict {
        ropes = List.copyOf(ropes);
        open = List.copyOf(open);
    }

    /** Whether every part of what the bound claims was computed again and holds. */
    public boolean isWhollyConfirmed() {
        return state == State.CONFIRMED && open.isEmpty();
    }

    /** Whether a bound holds. */
    public enum State {
        /** The duals or a proof by cases, computed again, prove it; maybe not every part of it was computed again. */
        CONFIRMED,
        /** The duals do not prove what is claimed, or the claim contradicts the plan. */
        REFUTED,
        /** Too large to compute again. */
        NOT_CHECKED
    }
}
