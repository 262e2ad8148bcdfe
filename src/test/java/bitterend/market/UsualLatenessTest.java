package bitterend.market;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.packing.ShopCalendar;
import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From when rope on order is counted on, two working days being usual. 2026-03-02 is a Monday. */
final class UsualLatenessTest {
    @ParameterizedTest
    @CsvSource({
        "2026-03-04, 2026-03-02, 2026-03-06", // as it is said, and two working days
        "2026-03-05, 2026-03-02, 2026-03-09", // a weekend between
        "2026-03-07, 2026-03-02, 2026-03-11", // nobody is there on the Saturday
        "2026-02-27, 2026-03-02, 2026-03-03", // a working day late so far
        "2026-02-26, 2026-03-02, 2026-03-04", // as late as usual already: expected anew
        "2026-02-20, 2026-03-02, 2026-03-04",
    })
    void rope_isCountedOn(LocalDate expected, LocalDate today, LocalDate from) {
        OnOrder order =
                new OnOrder("P-88", "", "DB12", Offer.Made.plain(Length.ofMetres(20)), 1, 0, expected, Money.ZERO);
        assertEquals(from, new UsualLateness(ShopCalendar.USUAL, UsualLateness.USUAL).from(order, today));
    }
}
