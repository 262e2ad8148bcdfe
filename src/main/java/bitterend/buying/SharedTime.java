package bitterend.buying;

import java.time.Duration;
import java.util.function.LongSupplier;

/** A stated time that phases share, one behind the other: each is handed what is left of it but for what is kept for later ones. */
public final class SharedTime {
    /** A phase gets so long, however late it is: a rough answer is better than none. */
    static final Duration LEAST = Duration.ofMillis(50);

    private final Duration whole;
    private final LongSupplier clock;
    private final long begun;

    /** @param clock tells nanoseconds, as {@link System#nanoTime} does */
    SharedTime(Duration whole, LongSupplier clock) {
        this.whole = whole;
        this.clock = clock;
        begun = clock.getAsLong();
    }

    /** So much time from now on. */
    public static SharedTime fromNow(Duration whole) {
        return new SharedTime(whole, System::nanoTime);
    }

    /** For the phase that begins now, if so many hundredths of the whole are kept for those behind it; at least {@link #LEAST}. */
    public Duration keeping(int hundredths) {
        Duration left = whole.minusNanos(clock.getAsLong() - begun)
                .minus(whole.multipliedBy(hundredths).dividedBy(100));
        return left.compareTo(LEAST) < 0 ? LEAST : left;
    }

    /** For the last phase. */
    public Duration left() {
        return keeping(0);
    }
}
