package bitterend.bench.peers;

import java.util.List;

/** What a solver came to. */
public final class Outcome {
    /** No plan was found and nothing proven. */
    public static final Outcome NOTHING = new Outcome(new long[0], Long.MIN_VALUE, List.of());

    private final long[] values;
    private final long bound;
    private final List<Step> steps;

    /**
     * A better plan.
     *
     * @param seconds when it was found
     * @param cost by the model, in 1/1000 minor unit
     */
    public record Step(double seconds, long cost) {}

    Outcome(long[] values, long bound, List<Step> steps) {
        this.values = values.clone();
        this.bound = bound;
        this.steps = List.copyOf(steps);
    }

    /** Whether there is a plan. */
    public boolean hasPlan() {
        return values.length > 0;
    }

    /** The values of all variables. */
    public long[] values() {
        return values.clone();
    }

    /** Nothing costs less, by the solver; {@link Long#MIN_VALUE} where it proved nothing. */
    public long bound() {
        return bound;
    }

    /** The plans on the way, each cheaper than the one before. */
    public List<Step> steps() {
        return steps;
    }
}
