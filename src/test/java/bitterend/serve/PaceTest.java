package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** How fast one device may ask. */
final class PaceTest {
    private final AtomicLong now = new AtomicLong(-5);
    private final Pace pace = new Pace(now::get);

    private long answered(String who, int asked) {
        return IntStream.range(0, asked).filter(each -> pace.lets(who)).count();
    }

    @Test
    void device_isAnsweredAtOnceAndThenSoManyASecond() {
        assertEquals(Pace.AT_ONCE, answered("tablet", 2 * Pace.AT_ONCE));
        assertFalse(pace.lets("tablet"));
        assertTrue(pace.lets("phone"), "another notices nothing");
        now.addAndGet(1_000_000_000L);
        assertEquals(Pace.A_SECOND, answered("tablet", 100));
        now.addAndGet(60_000_000_000L);
        assertEquals(Pace.AT_ONCE, answered("tablet", 2 * Pace.AT_ONCE), "no more than that is saved up");
    }
}
