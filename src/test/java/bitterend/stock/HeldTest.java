package bitterend.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Length;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rope that is spoken for, in one cell. */
final class HeldTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 5);
    private static final Held ORDER =
            new Held(new Length(50_000), Held.For.ORDER, "G-2200", DAY, "second halyard: blue");
    private static final Held CUSTOMER =
            new Held(new Length(30_250), Held.For.CUSTOMER, "ketch for sale, Brambling", DAY.plusDays(5), "");

    @Test
    void text_readsBack() {
        for (List<Held> all : List.of(List.<Held>of(), List.of(ORDER), List.of(CUSTOMER, ORDER))) {
            assertEquals(all, Held.parse(Held.text(all)).value().orElseThrow());
        }
    }

    @Test
    void lengths_areReadInAnyUnit() {
        List<Held> read =
                Held.parse("100 ft for order 7 until 2026-03-05").value().orElseThrow();
        assertEquals(new Length(30_480), read.get(0).length());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "50 m",
                "50 m for G-2200 until 2026-03-05",
                "50 for order G-2200 until 2026-03-05",
                "0 m for order G-2200 until 2026-03-05",
                "-5 m for order G-2200 until 2026-03-05",
                "50 m for order G-2200 until 2026-02-30",
                "50 m for order G-2200 until Friday",
                "50 m for order G-2200 until 2026-03-05; 30 m"
            })
    void anythingElse_isRefused(String text) {
        assertTrue(Held.parse(text).refusal().orElseThrow().startsWith("held rope such as 50 m for order")
                || Held.parse(text).refusal().orElseThrow().startsWith("a length"));
    }

    @Test
    void nameThatCouldNotBeReadBack_isNone() {
        assertFalse(Held.isName("a; b"));
        assertFalse(Held.isName("a until 2026"));
        assertFalse(Held.isName(" "));
        assertThrows(IllegalArgumentException.class, () -> new Held(Length.ZERO, Held.For.ORDER, "G", DAY, ""));
    }

    @Test
    void hold_lastsThroughItsDay() {
        assertTrue(ORDER.isOn(DAY));
        assertFalse(ORDER.isOn(DAY.plusDays(1)));
    }

    @Test
    void whatIsCutForIt_isHeldNoLonger_andNeverLessThanNothing() {
        Reel.Custody custody = Reel.Custody.FREE.holding(List.of(ORDER, CUSTOMER));
        assertEquals(
                new Length(19_990),
                custody.served(held -> held.serves("G-2200", ""), new Length(30_010))
                        .held()
                        .get(0)
                        .length());
        assertEquals(
                List.of(CUSTOMER),
                custody.served(held -> held.serves("G-2200", ""), new Length(50_010))
                        .held());
        assertEquals(custody, custody.served(held -> held.serves("G-1", "sloop Tern"), new Length(30_010)));
        assertEquals(
                List.of(ORDER),
                custody.served(held -> held.serves("G-1", "ketch for sale, Brambling"), new Length(40_000))
                        .held());
    }
}
