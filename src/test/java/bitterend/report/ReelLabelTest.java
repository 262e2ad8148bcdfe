package bitterend.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Length;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.stock.Flaw;
import org.junit.jupiter.api.Test;

/** A flaw as it was marked: by one mark or two, and how far they may be off. */
final class ReelLabelTest {
    private static String stretch(Units units, long from, long to, long uncertainty) {
        Flaw flaw = new Flaw(new Length(from), new Length(to), new Length(uncertainty), "chafed");
        return ReelLabel.stretch(flaw, new Figures(units, new MoneyText("EUR", 2)));
    }

    @Test
    void flaw_isNamedByItsMarks() {
        assertEquals("9.500 m to 9.800 m", stretch(Units.METRIC, 9_500, 9_800, 0));
        assertEquals("9.500 m to 9.800 m +/- 0.100 m", stretch(Units.METRIC, 9_500, 9_800, 100));
        assertEquals("17.000 m +/- 0.500 m", stretch(Units.METRIC, 17_000, 17_000, 500));
        assertEquals("17.000 m", stretch(Units.METRIC, 17_000, 17_000, 0));
    }

    /** 25.4 mm are an inch. */
    @Test
    void flaw_isNamedInImperialUnits() {
        assertEquals("10 ft to 20 ft +/- 5 in", stretch(Units.IMPERIAL, 3_048, 6_096, 127));
    }
}
