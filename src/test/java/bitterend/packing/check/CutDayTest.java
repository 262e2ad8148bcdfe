package bitterend.packing.check;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.packing.CutPlan;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.packing.Sketch;
import bitterend.shops.PlanWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** To which days a reel may be brought forward. The day of a sketch is Monday 2026-03-02; the rope on order comes on Wednesday. */
final class CutDayTest {
    private final PackingProblem problem = new Sketch()
            .with(reel("R1", 10_000))
            .with(reel("U1", 10_000).useBy(Sketch.DAY.plusDays(1)))
            .with(reel("P-1:1", 10_000))
            .coming("P-1:1", Sketch.DAY.plusDays(2))
            .with(piece("A", 4_000).due(Sketch.DAY.plusDays(4)).finishing(1))
            .with(piece("B", 4_000).due(Sketch.DAY.plusDays(8)))
            .with(piece("C", 4_000).due(Sketch.DAY.plusDays(4)))
            .problem();

    @ParameterizedTest
    @CsvSource({
        "R1, 2026-03-02, true",
        "R1, 2026-03-04, true",
        "R1, 2026-03-05, false", // its own day
        "R1, 2026-03-06, false", // too late for A, which is cut a day before it is due
        "R1, 2026-02-27, false", // past
        "R1, 2026-03-01, false", // past, and a Sunday
        "P-1:1, 2026-03-04, true",
        "P-1:1, 2026-03-03, false", // it is not there yet
    })
    void reelIsBroughtForward_whenItIsThereAndNoPieceAsksForItYet(String reel, LocalDate day, boolean sound) {
        assertEquals(
                sound ? List.of() : List.of(Check.CUT_DAY),
                faults(Map.of("A", "R1", "B", "R1", "C", "P-1:1"), reel, day));
    }

    /** To be used by Tuesday. */
    @Test
    void reelIsBroughtForward_toItsLastDayAtTheLatest() {
        Map<String, String> places = Map.of("A", "R1", "B", "U1", "C", "P-1:1");
        assertEquals(List.of(), faults(places, "U1", LocalDate.of(2026, 3, 3)));
        assertEquals(List.of(Check.CUT_DAY), faults(places, "U1", LocalDate.of(2026, 3, 4)));
    }

    /** B must be cut by Tuesday the 10th; the Saturday before is no day to cut. */
    @Test
    void weekend_isNoDayToCut() {
        Map<String, String> places = Map.of("A", "P-1:1", "B", "R1", "C", "P-1:1");
        assertEquals(List.of(), faults(places, "R1", LocalDate.of(2026, 3, 6)));
        assertEquals(List.of(Check.CUT_DAY), faults(places, "R1", LocalDate.of(2026, 3, 7)));
    }

    private List<Check> faults(Map<String, String> places, String reel, LocalDate day) {
        Map<String, RunId> runs = new java.util.HashMap<>();
        places.forEach((piece, on) -> runs.put(piece, new RunId(on, 1)));
        CutPlan plan = PlanWriter.write(problem, new Packing(runs));
        return PlanChecker.check(problem, Surgery.draw(plan, reel, draw -> draw.broughtForwardTo(day))).stream()
                .map(Fault::check)
                .toList();
    }
}
