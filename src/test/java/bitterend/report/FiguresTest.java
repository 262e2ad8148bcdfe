package bitterend.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Cost;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import org.junit.jupiter.api.Test;

final class FiguresTest {
    private final Figures figures = new Figures(Units.METRIC, new MoneyText("EUR", 2));

    /** A thousandth of a cent more than 12 cents: what is saved at most is 13, what it costs at least 12. */
    @Test
    void limits_areRoundedToTheSafeSide() {
        assertEquals("0.13 EUR", figures.atMost(new Cost(12_001)));
        assertEquals("0.12 EUR", figures.atLeast(new Cost(12_999)));
        assertEquals("0.12 EUR", figures.atMost(new Cost(12_000)));
        assertEquals("0.12 EUR", figures.atLeast(new Cost(12_000)));
    }
}
