package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is left between a bound and the best plan, closed among few patterns. */
final class GapClosingTest {
    private static final int SHOPS = Math.max(40, Integer.getInteger("shops", 200) / 4);
    private static final long SEED = Long.getLong("shops.seed", 20260308);

    @Test
    void proven_isAtMostTheOptimum_withManyPatternsAndFew() {
        int raised = 0;
        int closed = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            BranchAndCutTest.Case one = new BranchAndCutTest.Case(SEED + shop, 8, 12);
            if (!one.usable()) {
                continue;
            }
            Random random = new Random(shop);
            Pricer pricer = new Pricer(one.instance);
            Master master = new Master(one.instance, pricer, Rejection.NEVER, one.start, 1);
            master.solve(Long.MAX_VALUE / 4, 1 + random.nextInt(40), false, Budget.endless());
            int patterns = random.nextBoolean() ? 100_000 : 3 + random.nextInt(30);
            GapClosing endgame = new GapClosing(one.instance, pricer, one.best, 1, patterns);
            Budget budget =
                    random.nextBoolean() ? Budget.endless() : Budget.endless().part(random.nextInt(100_000));
            long before = one.instance.roundUp(master.bound().ceiling());
            long proven = endgame.run(master.bound(), new int[one.instance.types.length], one.most, budget);
            assertTrue(proven <= one.optimum, one.where + ": " + proven + " above " + one.optimum);
            assertTrue(one.best.cost() >= one.optimum, one.where);
            if (patterns == 100_000 && !budget.over() && before > 0) {
                assertEquals(one.optimum, one.best.cost(), one.where);
                closed++;
            }
            raised += proven > before ? 1 : 0;
        }
        assertTrue(raised > SHOPS / 8, "hardly any bound was raised: " + raised);
        assertTrue(closed > SHOPS / 8, "hardly any gap was closed: " + closed);
    }
}
