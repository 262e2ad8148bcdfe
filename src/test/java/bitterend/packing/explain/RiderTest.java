package bitterend.packing.explain;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.packing.CutPlan;
import bitterend.packing.Sketch;
import bitterend.shops.PlanWriter;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** How much later than it is expected rope may come; to be cut by Wednesday the 11th. */
final class RiderTest {
    private static final LocalDate WEDNESDAY = LocalDate.of(2026, 3, 11);

    private static int leeway(LocalDate expected) {
        Sketch sketch = new Sketch()
                .with(reel("P-88:1", 10_000))
                .coming("P-88:1", expected)
                .with(piece("A", 5_000).due(WEDNESDAY), "P-88:1", 1);
        CutPlan plan = PlanWriter.write(sketch.problem(), sketch.packing());
        return Rider.of(sketch.problem(), plan.draws()).get(0).leeway();
    }

    @Test
    void leeway_isCountedInWorkingDays() {
        assertEquals(0, leeway(WEDNESDAY));
        assertEquals(2, leeway(WEDNESDAY.minusDays(2)));
        assertEquals(3, leeway(WEDNESDAY.minusDays(5)));
    }

    /** What comes at a weekend is cut from on Monday at the earliest, as if it came then. */
    @Test
    void ropeThatComesAtAWeekend_hasTheLeewayOfMonday() {
        assertEquals(2, leeway(WEDNESDAY.minusDays(3)));
        assertEquals(2, leeway(WEDNESDAY.minusDays(4)));
    }
}
