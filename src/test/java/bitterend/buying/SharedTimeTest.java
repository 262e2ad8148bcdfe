package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.measure.Money;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.strategy.FullStrategy;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The phases of an advice share its time: by a clock of the test's own, never by how long anything takes. */
final class SharedTimeTest {
    private static final Duration WHOLE = Duration.ofHours(10);

    private final List<Duration> handed = new ArrayList<>();
    private long now;

    @Test
    void phase_isHandedWhatIsLeft_lessWhatIsKept() {
        SharedTime time = new SharedTime(WHOLE, () -> now);
        assertEquals(Duration.ofHours(7), time.keeping(30));
        now = Duration.ofHours(6).toNanos();
        assertEquals(Duration.ofHours(1), time.keeping(30));
        assertEquals(Duration.ofHours(4), time.left());
    }

    @Test
    void latePhase_isHandedAMoment() {
        SharedTime time = new SharedTime(WHOLE, () -> now);
        now = Duration.ofHours(8).toNanos();
        assertEquals(SharedTime.LEAST, time.keeping(30));
        now = Duration.ofHours(11).toNanos();
        assertEquals(SharedTime.LEAST, time.left());
    }

    /** With money for one of two reels: the ways leave time to see which, and the whole is never handed out twice. */
    @Test
    void ways_leaveTimeForWhatABudgetCanPayFor() {
        Advice advice = advise(Duration.ZERO);
        assertEquals(List.of("LATER/1.1"), advice.unpaid());
        assertTrue(handed.get(0).compareTo(WHOLE.multipliedBy(65).dividedBy(100).dividedBy(5)) <= 0, handed.toString());
        assertTrue(handed.get(handed.size() - 1).compareTo(Duration.ofMinutes(1)) > 0, handed.toString());
    }

    /** The first packing takes all of the time: every other is handed a moment, and the answer is there all the same. */
    @Test
    void waysThatTookAllTheTime_leaveAMomentForTheRest() {
        Advice advice = advise(WHOLE);
        assertEquals(List.of("LATER/1.1"), advice.unpaid());
        assertEquals(1, advice.act().set().of("big"));
        assertTrue(handed.size() > 2, handed.toString());
        for (Duration later : handed.subList(1, handed.size())) {
            assertTrue(later.compareTo(SharedTime.LEAST) <= 0, handed.toString());
        }
    }

    /** @param taken by each packing, as the clock tells it */
    private Advice advise(Duration taken) {
        List<Piece> pieces = List.of(
                Stall.piece("LATER", "1.1", 90, Stall.DAY.plusDays(60)),
                Stall.piece("URGENT", "1.1", 90, Stall.DAY.plusDays(2)));
        Orders orders = Stall.orders(pieces, List.of(Stall.offer("big", 100, 80)));
        Packer plain = FullStrategy.patternsAlone();
        Packer slow = (problem, effort) -> {
            handed.add(effort.time());
            now += taken.toNanos();
            return plain.pack(
                    problem,
                    new Effort(
                            Duration.ofMillis(300),
                            effort.work(),
                            effort.seed(),
                            1,
                            effort.cancelled(),
                            effort.progress()));
        };
        return new Buyer(
                        orders,
                        slow,
                        Effort.of(WHOLE),
                        new Spending(new Money(100), Spending.FOREVER),
                        Map.of(),
                        () -> now)
                .advise();
    }
}
