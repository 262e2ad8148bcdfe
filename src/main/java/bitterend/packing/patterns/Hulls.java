package bitterend.packing.patterns;

import java.util.HashMap;
import java.util.Map;

/** The hull of every run, worked out when first asked for. */
final class Hulls {
    private final Map<ValuedRun, Hull> byRun = new HashMap<>();

    Hull of(ValuedRun run) {
        return byRun.computeIfAbsent(run, Hull::of);
    }
}
