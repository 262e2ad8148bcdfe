package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Cost;
import bitterend.measure.MoneyText;
import bitterend.packing.Effort;
import org.junit.jupiter.api.Test;

final class ProgressLinesTest {
    private static final MoneyText EURO = new MoneyText("EUR", 2);

    @Test
    void boundOfNothing_isNotKnownYet() {
        assertEquals(
                "DB12: best 76.22 EUR, bound not known yet; 8 s left",
                ProgressLines.line(new Effort.Progress("DB12", new Cost(7_622_000), Cost.ZERO, 0), EURO, 8));
    }

    @Test
    void boundAndWhatIsNotPlanned_areTold() {
        assertEquals(
                "DB12: best 72.47 EUR, bound 65.20 EUR, at most 7.27 EUR avoidable, 8 not planned; 0 s left",
                ProgressLines.line(new Effort.Progress("DB12", new Cost(7_247_000), new Cost(6_520_000), 8), EURO, 0));
    }
}
