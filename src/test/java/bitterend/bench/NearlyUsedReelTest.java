package bitterend.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.bench.Dividing;
import bitterend.packing.bench.Workbench;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.loads.BestPlans;
import bitterend.packing.loads.LoadPacker;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/**
 * A linear program that uses all of a reel but four thousandths saves as much of what the reel costs as was open on a whole day:
 * while such a reel counted as used, thousands of branches on copies did not raise the bound.
 */
final class NearlyUsedReelTest {
    private static final long COIN = 1000;

    @Test
    void dayThatTurnsOnWhatIsLeftOfAReel_isProven() {
        PackingProblem day = RealDay.of(102, DayKind.usual(60).madePlain());
        BestPlans plans = new BestPlans(day);
        plans.offer(Dividing.improve(new Workbench(day), new GreedyPacker(day).best(), work(20_000, 15)));
        LoadPacker.Answer answer = LoadPacker.of(day, plans, 102).orElseThrow().run(work(5_000_000, 102));
        assertTrue(
                answer.bound() > plans.best().cost() - COIN,
                "bound " + answer.bound() + ", plan " + plans.best().cost() + ", nodes " + answer.nodes());
    }

    private static Effort work(long work, long seed) {
        return new Effort(Duration.ofHours(1), work, seed, 1, () -> false, progress -> {});
    }
}
