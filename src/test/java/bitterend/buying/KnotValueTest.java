package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class KnotValueTest {
    /** Cutting a length up never creates value: V(a) + V(b) is at most V(a + b). */
    @Test
    void typedCurve_neverPaysForCuttingUp() {
        KnotValue value = new KnotValue(
                new UnitPrice(1_370),
                List.of(
                        new KnotValue.Knot(new Length(3_000), new Ratio(1, 10)),
                        new KnotValue.Knot(new Length(12_500), new Ratio(7, 10)),
                        new KnotValue.Knot(new Length(80_000), new Ratio(95, 100))));
        assertEquals(0, value.of(new Length(2_999)).millis());
        assertEquals(411, value.of(new Length(3_000)).millis(), "3 m at 1370 a metre, a tenth of it");
        Random dice = new Random(8);
        for (int i = 0; i < 5_000; i++) {
            Length a = new Length(dice.nextInt(90_000));
            Length b = new Length(dice.nextInt(90_000));
            Cost apart = value.of(a).plus(value.of(b));
            assertTrue(apart.compareTo(value.of(a.plus(b))) <= 0, a + " and " + b);
        }
    }
}
