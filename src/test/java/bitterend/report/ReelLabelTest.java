package bitterend.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Length;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.packing.ReelSketch;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a label says before anybody cuts from the reel that it sticks on. */
final class ReelLabelTest {
    private static final Figures METRIC = new Figures(Units.METRIC, new MoneyText("EUR", 2));

    private static List<String> lines(Reel reel) {
        return ReelLabel.withFlaws(reel, "", METRIC);
    }

    @Test
    void reelThatIsNotToBeCut_saysSoBehindItsRope() {
        assertEquals(
                List.of("K1", "white", "ON HOLD, not to be cut", "lot L1"),
                lines(ReelSketch.reel("K1", 9_000).lot("L1").onHold().reel()));
        assertEquals(
                List.of("K2", "white", "kept for order 7", "lot L1"),
                lines(ReelSketch.reel("K2", 9_000).lot("L1").reservedFor("7").reel()));
    }

    @Test
    void ropeThatCannotBeCountedOn_isNamed() {
        Reel reel = ReelSketch.reel("K3", 9_000).lot("L1").reel();
        Reel.Contents contents = new Reel.Contents(
                new Length(9_000), new Length(500), new Length(200), new Length(1_500), Reel.Known.METERED);
        assertEquals(
                List.of(
                        "K3",
                        "white",
                        "may be 0.500 m shorter",
                        "0.200 m of worn end, to be cut off first",
                        "1.500 m of inner wraps, not to be used",
                        "lot L1"),
                lines(reel.withContents(contents)));
    }

    private static String stretch(Units units, long from, long to, long uncertainty) {
        Flaw flaw = new Flaw(new Length(from), new Length(to), new Length(uncertainty), "chafed");
        return ReelLabel.stretch(flaw, new Figures(units, new MoneyText("EUR", 2)));
    }

    /** A flaw as it was marked: by one mark or two, and how far they may be off. */
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
