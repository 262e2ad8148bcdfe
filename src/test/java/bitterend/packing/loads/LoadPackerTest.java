package bitterend.packing.loads;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.PackingProblem;
import bitterend.packing.linear.Budget;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** The load engine against every plan of small days. {@code -Dtight.days=N} looks at more of them. */
final class LoadPackerTest {
    private static final int DAYS = Integer.getInteger("tight.days", 200);
    private static final long COIN = 1000;

    @Test
    void tightDays_areProvenAndNoBoundIsAboveTheBestPlan() {
        for (int seed = 0; seed < DAYS; seed++) {
            String name = "seed " + seed;
            PackingProblem problem = TightDay.of(seed, 7);
            BruteForce all = new BruteForce(problem);
            BestPlans plans = new BestPlans(problem);
            LoadPacker.of(problem, plans, seed).ifPresent(engine -> {
                LoadPacker.Answer answer = engine.run(Budget.of(40_000_000L, Duration.ofDays(1), () -> false));
                judge(name, all, plans, answer);
            });
        }
    }

    private static void judge(String day, BruteForce all, BestPlans plans, LoadPacker.Answer answer) {
        assertArrayEquals(all.least(), plans.best().undone(), day);
        assertArrayEquals(all.least(), answer.leastUndone(), day);
        assertTrue(answer.bound() <= all.cost(), day + ": bound " + answer.bound() + " above " + all.cost());
        assertTrue(
                answer.bound() > plans.best().cost() - COIN,
                day + ": bound " + answer.bound() + ", plan " + plans.best().cost() + " of " + all.cost());
    }
}
