package bitterend.work.plans;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Length;
import bitterend.packing.Brake;
import bitterend.packing.Effort;
import bitterend.packing.Horizon;
import bitterend.packing.Packer;
import bitterend.packing.PackingProblem;
import bitterend.packing.Sketch;
import bitterend.packing.strategy.EffortLevel;
import bitterend.packing.strategy.FullStrategy;
import bitterend.work.Watcher;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A day that is planned more than once keeps to its time all the same. */
final class PlanSearchTest {
    private static final Duration TIME = Duration.ofSeconds(2);
    private static final LocalDate FRIDAY = Sketch.DAY.plusDays(4);

    private final List<Duration> given = new ArrayList<>();

    /** Uses up all the time that it is given. */
    private Packer.Result pack(PackingProblem problem, Effort effort) {
        given.add(effort.time());
        long end = System.nanoTime() + effort.time().toNanos();
        Effort little = new Effort(effort.time(), 1_000, 1, 1, () -> false, any -> {});
        Packer.Result result = FullStrategy.patternsAlone().pack(problem, little);
        while (System.nanoTime() < end) {
            Thread.onSpinWait();
        }
        return result;
    }

    private void plan(Sketch sketch, Brake.Terms terms) {
        PackingProblem all = sketch.problem();
        PackingProblem near = Horizon.near(all, FRIDAY, Set.of());
        DayQuestion question = new DayQuestion(
                near,
                new Brake(all, terms).held(near, Set.of()),
                new DayQuestion.Stock("reels.csv", 1, 0, Set.of()),
                List.of(),
                false,
                null);
        new PlanSearch(this::pack, EffortLevel.QUICK, TIME, 1, 1, System.nanoTime()).ahead(question, Watcher.NOBODY);
    }

    @Test
    void oneThatCanBeNoOther_getsAllOfIt() {
        plan(new Sketch().with(reel("R1", 10_000)).with(piece("A", 5_000).due(FRIDAY)), Brake.Terms.OFF);
        assertEquals(1, given.size());
        assertTrue(given.get(0).compareTo(TIME.minusMillis(300)) > 0, given + "");
    }

    @Test
    void todayAlone_isPlannedInWhatIsLeft() {
        plan(
                new Sketch()
                        .with(reel("R1", 10_000))
                        .with(piece("overdue", 6_000).due(Sketch.DAY.minusDays(3)))
                        .with(piece("thursday", 9_000).due(FRIDAY).priority(1)),
                Brake.Terms.OFF);
        assertEquals(2, given.size());
        assertWithin();
    }

    @Test
    void withoutWhatTheBrakeHoldsBack_itIsPlannedInWhatIsLeft() {
        plan(
                new Sketch()
                        .with(reel("R1", 10_000))
                        .with(piece("today", 2_000).due(Sketch.DAY))
                        .with(piece("friday", 3_000).due(FRIDAY)),
                new Brake.Terms(4, Map.of(Sketch.ROPE, new Length(400)), Map.of()));
        assertEquals(2, given.size());
        assertWithin();
    }

    private void assertWithin() {
        Duration all = given.stream().reduce(Duration.ZERO, Duration::plus);
        assertTrue(all.compareTo(TIME) <= 0, given + "");
    }
}
