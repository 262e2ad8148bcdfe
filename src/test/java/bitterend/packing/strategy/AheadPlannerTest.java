package bitterend.packing.strategy;

import static bitterend.packing.PieceSketch.ofRope;
import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Brake;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Horizon;
import bitterend.packing.PackingProblem;
import bitterend.packing.Prices;
import bitterend.packing.Sketch;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which of the ways of looking ahead is taken. */
final class AheadPlannerTest {
    private static final LocalDate MONDAY = Sketch.DAY;
    private static final LocalDate THURSDAY = MONDAY.plusDays(3);
    private static final LocalDate FRIDAY = MONDAY.plusDays(4);
    private static final Prices FETCHING =
            new Prices(Cost.ZERO, new Cost(3_000), Cost.ZERO, Cost.ZERO, Cost.ZERO, Cost.ZERO);

    private final List<PackingProblem> asked = new ArrayList<>();

    private AheadPlanner.Planned plan(Sketch sketch, Brake.Terms terms) {
        PackingProblem all = sketch.problem();
        PackingProblem near = Horizon.near(all, FRIDAY, Set.of());
        return new AheadPlanner((problem, quarters) -> {
                    asked.add(problem);
                    Effort effort = new Effort(
                            Duration.ofDays(1), 1_000L * problem.pieces().size(), 1, 1, () -> false, any -> {});
                    return new DayPlanner(FullStrategy.patternsAlone()).checked(problem, effort);
                })
                .plan(near, new Brake(all, terms).held(near, Set.of()), Set.of());
    }

    private static List<String> undone(CutPlan plan) {
        return plan.unplanned().stream().map(each -> each.piece()).toList();
    }

    /** Two overdue pieces of the usual priority weigh less than Thursday's one of the first, and both want the one reel. */
    @Test
    void urgentWorkOfThursday_doesNotTakeTheRopeOfTodaysFirstClass() {
        Sketch sketch = new Sketch()
                .with(reel("R1", 10_000))
                .with(piece("overdue", 6_000).due(MONDAY.minusDays(3)))
                .with(piece("thursday", 9_000).due(THURSDAY).priority(1));
        AheadPlanner.Planned planned = plan(sketch, Brake.Terms.OFF);
        assertEquals(List.of(), undone(planned.plan()));
        assertTrue(planned.problem().horizon().isTodayAlone());
        assertEquals(2, asked.size());
    }

    @Test
    void whereTodayAloneDoesNoBetter_theHorizonStays() {
        Sketch sketch = new Sketch()
                .with(reel("R1", 10_000))
                .with(piece("overdue", 11_000).due(MONDAY.minusDays(3)))
                .with(piece("thursday", 9_000).due(THURSDAY).priority(1));
        AheadPlanner.Planned planned = plan(sketch, Brake.Terms.OFF);
        assertFalse(planned.problem().horizon().isTodayAlone());
        assertEquals(List.of("overdue"), undone(planned.plan()));
    }

    @Test
    void whereAllOfTodayIsPlanned_nothingIsPlannedTwice() {
        Sketch sketch = new Sketch()
                .with(reel("R1", 10_000))
                .with(piece("today", 6_000).due(MONDAY))
                .with(piece("friday", 9_000).due(FRIDAY));
        plan(sketch, Brake.Terms.OFF);
        assertEquals(1, asked.size());
    }

    /** Friday's piece would share the reel of today's; half of the reel is kept for urgent work that may still come. */
    @Test
    void workThatTheBrakeHoldsBack_isNotCutToday() {
        AheadPlanner.Planned planned =
                plan(shared(), new Brake.Terms(4, Map.of(Sketch.ROPE, new Length(400)), Map.of()));
        assertEquals(
                List.of("friday"), planned.problem().horizon().waiting().get(0).pieces());
        assertEquals(1, planned.plan().draws().get(0).cuts().size());
        assertEquals(2, asked.size());
        assertEquals(
                2, plan(shared(), Brake.Terms.OFF).plan().draws().get(0).cuts().size());
    }

    /** The white rope is short and its Friday would be cut today; the navy rope is as short, and nothing of it is cut today. */
    @Test
    void brake_takesOutWhatWaitsOfTheRopeThatWouldBeCutAheadAlone() {
        Sketch sketch = shared().with(reel("N1", 5_000).of(Sketch.OTHER_ROPE))
                .with(ofRope("navy thursday", Sketch.OTHER_ROPE, 4_000).due(THURSDAY))
                .with(ofRope("navy friday", Sketch.OTHER_ROPE, 3_000)
                        .due(FRIDAY)
                        .priority(9));
        Brake.Terms terms = new Brake.Terms(4, Map.of(Sketch.ROPE, new Length(400)), Map.of());
        AheadPlanner.Planned planned = plan(sketch, terms);
        assertEquals(List.of("friday"), waiting(planned));
        assertEquals(List.of("navy friday"), undone(planned.plan()));
        assertEquals(2, asked.size());
    }

    /** What comes off the reel on order keeps nobody from rope of the house. */
    @Test
    void brake_leavesWhatRidesOnRopeOnOrder() {
        Sketch sketch = shared().with(reel("P-88:1", 20_000))
                .coming("P-88:1", THURSDAY)
                .with(piece("rider", 9_500).due(FRIDAY));
        AheadPlanner.Planned planned = plan(sketch, new Brake.Terms(4, Map.of(Sketch.ROPE, new Length(500)), Map.of()));
        assertEquals(List.of("friday"), waiting(planned));
        assertEquals(
                List.of("P-88:1"),
                planned.plan().draws().stream()
                        .filter(draw -> draw.cuts().get(0).piece().equals("rider"))
                        .map(draw -> draw.reel())
                        .toList());
    }

    /** Two of Friday want 4 m each, and 5.99 m are left: one of them finds no rope, whichever is cut first. */
    @Test
    void workThatWaits_andFindsNoRopeEvenWithoutWaiting_isTold() {
        Sketch sketch = new Sketch()
                .prices(FETCHING)
                .with(reel("R1", 8_000))
                .with(piece("today", 2_000).due(MONDAY))
                .with(piece("one", 4_000).due(FRIDAY).order("G-7"))
                .with(piece("two", 4_000).due(FRIDAY).order("G-7"));
        AheadPlanner.Planned planned = plan(sketch, new Brake.Terms(4, Map.of(), Map.of()));
        assertEquals(List.of("one", "two"), waiting(planned));
        assertFalse(planned.problem().horizon().isRopeForWhatWaits());
        Horizon.Line line =
                planned.problem().horizon().waiting().get(0).undone().get(0);
        assertEquals(2, line.pieces());
        assertEquals(FRIDAY, line.due());
        assertEquals(1, line.undone().size());
    }

    /** It is kept rope from, and there is enough for it: nobody is alarmed. */
    @Test
    void workThatWaits_andFindsRope_isNotToldAsUndone() {
        AheadPlanner.Planned planned =
                plan(shared(), new Brake.Terms(4, Map.of(Sketch.ROPE, new Length(400)), Map.of()));
        assertEquals(List.of("friday"), waiting(planned));
        assertTrue(planned.problem().horizon().isRopeForWhatWaits());
    }

    private static List<String> waiting(AheadPlanner.Planned planned) {
        return planned.problem().horizon().waiting().stream()
                .flatMap(each -> each.pieces().stream())
                .toList();
    }

    private static Sketch shared() {
        return new Sketch()
                .prices(FETCHING)
                .with(reel("R1", 10_000))
                .with(piece("today", 2_000).due(MONDAY))
                .with(piece("friday", 3_000).due(FRIDAY));
    }

    /** It finds no rope anyhow: it stays in the plan, with its reason. */
    @Test
    void workThatIsNotCutTodayAnyhow_isToldOfAsEver() {
        Sketch sketch = new Sketch()
                .with(reel("R1", 10_000))
                .with(piece("today", 9_000).due(MONDAY).priority(1))
                .with(piece("friday", 5_000).due(FRIDAY));
        AheadPlanner.Planned planned = plan(sketch, new Brake.Terms(4, Map.of(), Map.of()));
        assertEquals(List.of(), planned.problem().horizon().waiting());
        assertEquals(List.of("friday"), undone(planned.plan()));
    }
}
