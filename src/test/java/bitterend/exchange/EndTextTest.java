package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.EyeSpec;
import bitterend.demand.EndSpec;
import bitterend.demand.EndSpec.FittingSpec;
import bitterend.demand.EndSpec.Options;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Ratio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One end in one cell. */
final class EndTextTest {
    private static final Diameter PIN = Diameter.ofMillimetres(150);

    @Test
    void end_withEveryWayToStateAnEye() {
        assertEnd("e length 300 mm pin 150 mm", new EyeSpec.FlatLength(mm(300), PIN));
        assertEnd("e pin 150 mm length 300 mm", new EyeSpec.FlatLength(mm(300), PIN));
        assertEnd("e perimeter 43 in", new EyeSpec.Perimeter(new FineLength(43 * 254_000), Diameter.NONE));
        assertEnd("e diameter 200 mm", new EyeSpec.RoundEye(mm(200), Diameter.NONE));
        assertEnd("e ratio 5 pin 150 mm", new EyeSpec.PinRatio(Ratio.of(5), PIN));
        assertEnd("e thimble T-12", new EyeSpec.OnThimble("T-12", Diameter.NONE));
        assertEnd("e  length  1 ft 2 1/2 in", new EyeSpec.FlatLength(new FineLength(3_683_000), Diameter.NONE));
        assertEnd("plain", EyeSpec.NONE);
    }

    @Test
    void end_withAFitting() {
        assertEquals(
                new FittingSpec("fork-12", FineLength.ZERO),
                end("swaged fork-12").fitting());
        assertEquals(new FittingSpec("", mm(45)), end("swaged bore 45 mm").fitting());
    }

    @Test
    void end_withOptions() {
        assertEquals(
                new Options(5, true, "", ""),
                end("three-strand-eye length 1 m tucks 5 tapered").options());
        assertEquals(
                new Options(0, false, "the master, by length of service", ""),
                end("e length 1 m accepted the master, by length of service").options());
        assertEquals(
                "24 diameters",
                end("e length 1 m tail 24 diameters").options().tail().text());
        assertEquals("600 mm", end("e tail 600 mm length 1 m").options().tail().text());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "length 300 mm",
                "e length",
                "e length 300",
                "e length 0 mm",
                "e length -3 mm",
                "e length 101 m",
                "e length 300 mm length 400 mm",
                "e length 300 mm perimeter 600 mm",
                "e ratio 5",
                "e ratio 0 pin 10 mm",
                "e pin 150 mm",
                "e thimble",
                "e thimble T 12",
                "e tucks five length 1 m",
                "e tapered away length 1 m",
                "e fork-12 bore 45 mm",
                "e fork 12 mm",
                "e accepted",
                "?",
                "e lenght 300 mm",
                "e tail length 1 m",
                "e tail 0 mm length 1 m",
                "e tail 2 tails length 1 m",
                "e tail 1001 diameters length 1 m",
            })
    void end_thatSaysNothingClearIsRefusedWithAnExample(String text) {
        String refusal = EndText.parse(text).refusal().orElseThrow();
        assertTrue(refusal.length() > 10, refusal);
    }

    private static void assertEnd(String text, EyeSpec eye) {
        EndSpec end = end(text);
        assertEquals(text.split(" ", -1)[0], end.termination());
        assertEquals(eye, end.eye());
        assertEquals(FittingSpec.NONE, end.fitting());
        assertEquals(Options.NONE, end.options());
    }

    private static EndSpec end(String text) {
        return EndText.parse(text).value().orElseThrow(() -> new AssertionError(text));
    }

    private static FineLength mm(long mm) {
        return FineLength.ofMillimetres(mm);
    }
}
