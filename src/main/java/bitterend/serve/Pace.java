package bitterend.serve;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongSupplier;

/**
 * How fast one device may ask: at once what a page and its parts ask for many times over, then so many a second. Who asks
 * faster waits; the others notice nothing.
 */
final class Pace {
    /** Requests that are answered at once. */
    static final int AT_ONCE = 200;
    /** Requests a second after that. */
    static final int A_SECOND = 40;

    private static final int MOST_KNOWN = 2_000;
    private static final long APART_NANOS = 1_000_000_000L / A_SECOND;

    private final LongSupplier clock;
    /** By who asks, when all that was asked for would be answered at the even pace. */
    private final Map<String, Long> even = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Long> eldest) {
            return size() > MOST_KNOWN;
        }
    };

    /** @param clock nanoseconds from any moment on */
    Pace(LongSupplier clock) {
        this.clock = clock;
    }

    /** Whether a request of somebody is answered now. */
    synchronized boolean lets(String who) {
        long now = clock.getAsLong();
        long behind = Math.max(0, even.getOrDefault(who, now) - now);
        boolean lets = behind <= (AT_ONCE - 1) * APART_NANOS;
        even.put(who, now + behind + (lets ? APART_NANOS : 0));
        return lets;
    }
}
