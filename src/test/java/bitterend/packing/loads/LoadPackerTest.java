package bitterend.packing.loads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.shops.BruteForce;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** The load engine against every plan of small days. {@code -Dtight.days=N} looks at more of them. */
final class LoadPackerTest {
    private static final int DAYS = Integer.getInteger("tight.days", 200);
    private static final long COIN = 1000;
    private static final Effort EFFORT = new Effort(Duration.ofDays(1), 400_000, 0, 1, () -> false, progress -> {});

    @Test
    void tightDays_areProvenAndNoBoundIsAboveTheBestPlan() {
        for (int seed = 0; seed < DAYS; seed++) {
            String name = "seed " + seed;
            PackingProblem problem = TightDay.of(seed, 7);
            BruteForce.Best all = BruteForce.best(problem);
            BestPlans plans = new BestPlans(problem);
            LoadPacker.of(problem, plans, seed).ifPresent(engine -> {
                LoadPacker.Answer answer = engine.run(EFFORT);
                judge(name, all, plans, answer);
            });
        }
    }

    /** Pieces fill a load there that a branch asks for and need no lot: this day stayed open when they did. */
    @Test
    void dayWhereLoadsAreFilledUp_isProven() {
        PackingProblem problem = TightDay.of(598, 7);
        BestPlans plans = new BestPlans(problem);
        LoadPacker.Answer answer =
                LoadPacker.of(problem, plans, 598).orElseThrow().run(EFFORT);
        judge("seed 598", BruteForce.best(problem), plans, answer);
    }

    private static void judge(String day, BruteForce.Best all, BestPlans plans, LoadPacker.Answer answer) {
        assertEquals(all.undone().weights(), plans.best().work().weights(), day);
        assertTrue(answer.leastProven(), day);
        assertTrue(
                answer.bound() <= all.cost().millis(),
                day + ": bound " + answer.bound() + " above " + all.cost().millis());
        assertTrue(
                answer.bound() > plans.best().cost() - COIN,
                day + ": bound " + answer.bound() + ", plan " + plans.best().cost() + " of "
                        + all.cost().millis());
    }
}
