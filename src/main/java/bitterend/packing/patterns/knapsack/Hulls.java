package bitterend.packing.patterns.knapsack;

import java.util.HashMap;
import java.util.Map;

/** The hull of every run, worked out when first asked for. */
public final class Hulls {
    private final Map<ValuedRun, Hull> byRun = new HashMap<>();

    /** The hull of a run, worked out once. */
    public Hull of(ValuedRun run) {
        return byRun.computeIfAbsent(run, Hull::of);
    }
}
