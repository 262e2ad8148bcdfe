package bitterend.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class WorkingDaysTest {
    private static final LocalDate FRIDAY = LocalDate.of(2026, 12, 18);
    private static final WorkingDays DAYS = new WorkingDays(
            new ShopCalendar(Set.of(FRIDAY.plusDays(3)), ShopCalendar.USUAL.next(), ShopCalendar.USUAL.soon()));

    @Test
    void weekendsAndClosedDays_areNoWorkingDays() {
        assertTrue(DAYS.isWorking(FRIDAY));
        assertFalse(DAYS.isWorking(FRIDAY.plusDays(1)));
        assertFalse(DAYS.isWorking(FRIDAY.plusDays(2)));
        assertFalse(DAYS.isWorking(FRIDAY.plusDays(3)), "closed");
    }

    @Test
    void daysAreCounted_forwardsAndBackwards() {
        assertEquals(FRIDAY, DAYS.after(FRIDAY, 0));
        assertEquals(FRIDAY.plusDays(4), DAYS.after(FRIDAY, 1));
        assertEquals(FRIDAY, DAYS.before(FRIDAY.plusDays(4), 1));
        assertEquals(FRIDAY.minusDays(1), DAYS.before(FRIDAY.plusDays(2), 2), "from a Sunday");
        assertEquals(FRIDAY.plusDays(1), DAYS.before(FRIDAY.plusDays(1), 0), "the day itself");
    }

    @Test
    void cutBy_isAWorkingDay() {
        assertEquals(FRIDAY, cutBy(FRIDAY.plusDays(3)), "the Monday is closed");
        assertEquals(FRIDAY.minusDays(1), cutBy(FRIDAY.plusDays(3), 2));
        assertEquals(FRIDAY.plusDays(4), cutBy(FRIDAY.plusDays(4)));
        assertEquals(LocalDate.MAX, cutBy(LocalDate.MAX));
    }

    private static LocalDate cutBy(LocalDate due) {
        return cutBy(due, 0);
    }

    private static LocalDate cutBy(LocalDate due, int finishing) {
        return DAYS.cutBy(new Sketch()
                .with(PieceSketch.piece("P", 1_000).due(due).finishing(finishing))
                .problem()
                .pieces()
                .get(0));
    }
}
