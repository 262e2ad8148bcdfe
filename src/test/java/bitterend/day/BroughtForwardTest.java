package bitterend.day;

import static bitterend.packing.PieceSketch.piece;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.packing.CutDays;
import bitterend.packing.CutPlan;
import bitterend.packing.Horizon;
import bitterend.packing.LengthBook;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceSketch;
import bitterend.packing.ReelDraw;
import bitterend.packing.Sketch;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Reels that are cut before their pieces ask for it. The day of a sketch, {@link Sketch#DAY}, is a Monday. */
final class BroughtForwardTest {
    private static final LocalDate MONDAY = Sketch.DAY;
    private static final LocalDate TUESDAY = MONDAY.plusDays(1);
    private static final LocalDate WEDNESDAY = MONDAY.plusDays(2);
    private static final LocalDate THURSDAY = MONDAY.plusDays(3);

    private final Sketch sketch = new Sketch();
    private final List<ReelDraw> draws = new ArrayList<>();

    /** Tuesday's two reels bring 140 min and 14 of fetching and cutting into 100; the one with more of it is cut on Monday. */
    @Test
    void reelOfADayThatIsTooFull_isCutOnTheDayBefore() {
        reel("R1", piece("now", 1_000).order("N").due(MONDAY).minutes(10));
        reel("R2", piece("A", 1_000).order("A").due(TUESDAY).minutes(60));
        reel("R3", piece("B", 1_000).order("B").due(TUESDAY).minutes(80));
        assertEquals(Map.of("R3", MONDAY), forward(100));
    }

    @Test
    void nothingThatIsTooFull_nothingIsMoved() {
        reel("R1", piece("now", 1_000).due(MONDAY).minutes(10));
        reel("R2", piece("A", 1_000).due(TUESDAY).minutes(60));
        assertEquals(Map.of(), forward(100));
    }

    /** Monday and Tuesday have room for it; the later day is nearer to what is not known yet. */
    @Test
    void lastDayThatHelps_isTaken() {
        reel("R1", piece("A", 1_000).order("A").due(THURSDAY).minutes(90));
        reel("R2", piece("B", 1_000).order("B").due(THURSDAY).minutes(90));
        assertEquals(Map.of("R1", WEDNESDAY), forward(100));
    }

    /** More than two days hold: no day alone helps wholly, each helps some. */
    @Test
    void workOfManyDays_isSpreadOverThem() {
        for (int i = 1; i <= 4; i++) {
            reel("R" + i, piece("P" + i, 1_000).order("O" + i).due(THURSDAY).minutes(90));
        }
        assertEquals(Map.of("R1", WEDNESDAY, "R2", TUESDAY, "R3", MONDAY), forward(97));
    }

    @Test
    void ropeOnOrder_isNotCutBeforeItComes() {
        sketch.coming("P-1:1", WEDNESDAY);
        sketch.coming("P-1:2", WEDNESDAY);
        reel("P-1:1", piece("A", 1_000).order("A").due(WEDNESDAY).minutes(90));
        reel("P-1:2", piece("B", 1_000).order("B").due(WEDNESDAY).minutes(90));
        assertEquals(Map.of(), forward(100));
    }

    @Test
    void whatTheBrakeKeeps_isNotCutBeforeMoreRopeComes() {
        reel("R1", piece("A", 1_000).order("A").due(WEDNESDAY).minutes(90));
        reel("R2", piece("B", 1_000).order("B").due(WEDNESDAY).minutes(90));
        Horizon brake = new Horizon(
                LocalDate.MAX,
                0,
                LocalDate.MAX,
                List.of(
                        new Horizon.Waiting(Sketch.ROPE, List.of("A"), TUESDAY, "P-1"),
                        new Horizon.Waiting(Sketch.OTHER_ROPE, List.of("B"), LocalDate.MAX, "")));
        assertEquals(Map.of("R1", TUESDAY), forward(100, brake));
    }

    /** The least that can be late, by every way of putting four reels on the days up to their own. */
    @Test
    void lateWork_isAsLittleAsByAnyWayOfBringingReelsForward() {
        Random random = new Random(20);
        int moved = 0;
        int behind = 0;
        for (int i = 0; i < 400; i++) {
            draws.clear();
            Sketch shop = new Sketch();
            for (int n = 0; n < 4; n++) {
                int must = random.nextInt(5);
                draws.add(BenchSketch.reel(
                        shop,
                        "R" + n,
                        piece("P" + n, 1_000)
                                .order("O" + n)
                                .due(MONDAY.plusDays(must))
                                .finishing(random.nextInt(must + 1))
                                .minutes(10 * random.nextInt(12))));
            }
            BenchHours hours = new BenchHours(BenchSketch.everyDay(40 + random.nextInt(60)), 3, 4);
            PackingProblem problem = shop.problem();
            CutPlan plan = new BroughtForward(hours, problem, Horizon.ALL, List.of()).of(plan());
            long before = late(hours, problem, draws);
            long ours = late(hours, problem, plan.draws());
            long best = best(hours, problem, new ArrayList<>(draws), 0);
            assertTrue(ours <= before && best <= ours, "week " + i);
            moved += ours < before ? 1 : 0;
            behind += ours > best ? 1 : 0;
            CutDays days = new CutDays(problem);
            plan.draws().stream()
                    .filter(ReelDraw::isBroughtForward)
                    .forEach(draw -> assertTrue(days.of(draw).isBefore(days.askedFor(draw))
                            && !days.of(draw).isBefore(MONDAY)));
        }
        assertTrue(moved > 80, "helped in " + moved);
        assertEquals(0, behind, "weeks in which less could be late");
    }

    private static long best(BenchHours hours, PackingProblem problem, List<ReelDraw> some, int from) {
        if (from == some.size()) {
            return late(hours, problem, some);
        }
        ReelDraw asked = some.get(from);
        long best = best(hours, problem, some, from + 1);
        for (LocalDate day = MONDAY; day.isBefore(new CutDays(problem).askedFor(asked)); day = day.plusDays(1)) {
            some.set(from, asked.broughtForwardTo(day));
            best = Math.min(best, best(hours, problem, some, from + 1));
        }
        some.set(from, asked);
        return best;
    }

    private static long late(BenchHours hours, PackingProblem problem, List<ReelDraw> some) {
        return new BenchDays(hours, problem, some, List.of())
                .days().stream().mapToLong(BenchDay::over).sum();
    }

    private Map<String, LocalDate> forward(int minutes) {
        return forward(minutes, Horizon.ALL);
    }

    private Map<String, LocalDate> forward(int minutes, Horizon brake) {
        Map<String, LocalDate> days = new java.util.TreeMap<>();
        new BroughtForward(new BenchHours(BenchSketch.everyDay(minutes), 3, 4), sketch.problem(), brake, List.of())
                .of(plan()).draws().stream()
                        .filter(ReelDraw::isBroughtForward)
                        .forEach(draw -> days.put(draw.reel(), draw.forward()));
        return days;
    }

    private CutPlan plan() {
        return new CutPlan(MONDAY, draws, List.of(), LengthBook.EMPTY, Cost.ZERO, List.of());
    }

    private void reel(String id, PieceSketch... pieces) {
        draws.add(BenchSketch.reel(sketch, id, pieces));
    }
}
