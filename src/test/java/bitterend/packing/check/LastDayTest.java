package bitterend.packing.check;

import static bitterend.packing.PieceSketch.piece;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.PieceSketch;
import bitterend.packing.ShopCalendar;
import bitterend.packing.Sketch;
import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Counted off a calendar by hand: Thursday 2026-03-05 is closed, the 7th and 8th are a weekend. */
final class LastDayTest {
    private static final ShopCalendar CALENDAR =
            new ShopCalendar(Set.of(LocalDate.of(2026, 3, 5)), ShopCalendar.USUAL.next(), ShopCalendar.USUAL.soon());

    private static final LastDay DAYS = new LastDay(CALENDAR);

    private static LocalDate lastDay(PieceSketch sketch) {
        return DAYS.of(new Sketch().with(sketch).problem().pieces().get(0));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-11, 0, 2026-03-11", // Wednesday
        "2026-03-11, 1, 2026-03-10",
        "2026-03-11, 2, 2026-03-09",
        "2026-03-11, 3, 2026-03-06", // over the weekend
        "2026-03-11, 4, 2026-03-04", // and over the closed day
        "2026-03-08, 0, 2026-03-06", // due on a Sunday
        "2026-03-08, 1, 2026-03-06",
        "2026-03-05, 0, 2026-03-04", // due on the closed day
    })
    void lastDay_isCountedBackOverWorkingDays(LocalDate due, int finishing, LocalDate last) {
        assertEquals(last, lastDay(piece("A", 1_000).due(due).finishing(finishing)));
    }

    @Test
    void workWithoutADay_hasNoLastOne() {
        assertEquals(LocalDate.MAX, lastDay(piece("A", 1_000).due(LocalDate.MAX).finishing(3)));
    }

    @Test
    void nobodyWorks_onWeekendsAndClosedDays() {
        assertTrue(DAYS.isWorking(LocalDate.of(2026, 3, 6)));
        assertFalse(DAYS.isWorking(LocalDate.of(2026, 3, 7)));
        assertFalse(DAYS.isWorking(LocalDate.of(2026, 3, 8)));
        assertFalse(DAYS.isWorking(LocalDate.of(2026, 3, 5)));
        assertTrue(DAYS.isWorking(LocalDate.of(2026, 3, 9)));
    }
}
