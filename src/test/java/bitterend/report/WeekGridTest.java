package bitterend.report;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.packing.Sketch;
import bitterend.shops.PlanWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The days of the week that have a column, where rope comes after the last piece. */
final class WeekGridTest {
    private static final LocalDate MONDAY = Sketch.DAY;

    private static WeekGrid grid(LocalDate from) {
        Sketch sketch = new Sketch()
                .with(reel("R1", 10_000))
                .with(reel("P-88:1", 10_000))
                .coming("P-88:1", from)
                .with(piece("A", 5_000).due(MONDAY), "R1", 1);
        return new WeekGrid(new PlanView(
                "loft", sketch.problem(), PlanWriter.write(sketch.problem(), sketch.packing()), Map.of(), List.of()));
    }

    @Test
    void reelThatComesNextWeek_hasItsDay() {
        WeekGrid grid = grid(MONDAY.plusDays(8));
        assertEquals(7, grid.days().size());
        assertEquals(List.of("P-88:1"), grid.coming().get(6));
        assertEquals(false, grid.hasLater());
    }

    @Test
    void reelThatComesBehindTheDaysWithAColumn_sharesTheOneForLater() {
        WeekGrid grid = grid(MONDAY.plusDays(14));
        assertEquals(true, grid.hasLater());
        assertEquals(List.of("P-88:1"), grid.coming().get(grid.columns() - 1));
        assertEquals(List.of(), grid.coming().get(4));
    }
}
