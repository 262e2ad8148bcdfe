package bitterend.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A shelf that runs out: what was opened comes so many weeks later, and until then pieces wait. */
final class SteadyRackTest {
    private static final SteadyRope ROPE = new SteadyRope("half-reel", List.of(100), 0, 25, 48, 100, 2);
    private static final List<Length> TWO = List.of(Length.ofMetres(60), Length.ofMetres(60));

    @Test
    void reelThatWasOpened_comesAfterItsWeeks() {
        SteadyRack rack = new SteadyRack(ROPE, new SteadyRack.Shelf(1, 2));
        SteadyPolicy plain = SteadyPolicy.plainRule(ROPE);
        assertEquals(List.of(Length.ofMetres(60)), plain.cut(rack, TWO));
        assertEquals(0, rack.available(0));
        plain.cut(rack, List.of());
        assertEquals(0, rack.available(0));
        plain.cut(rack, List.of());
        assertEquals(1, rack.available(0));
    }

    @Test
    void everyWay_leavesTheSamePieceWhereOneReelIsThere() {
        for (SteadyPolicy policy :
                List.of(SteadyPolicy.coilsFirst(ROPE), SteadyPolicy.olderCurve(ROPE), SteadyPolicy.bestFit(ROPE))) {
            SteadyRack rack = new SteadyRack(ROPE, new SteadyRack.Shelf(1, 2));
            assertEquals(List.of(Length.ofMetres(60)), policy.cut(rack, TWO));
            rack.endless();
            assertEquals(List.of(), policy.cut(rack, TWO));
        }
    }
}
