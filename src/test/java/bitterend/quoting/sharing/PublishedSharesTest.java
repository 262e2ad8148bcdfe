package bitterend.quoting.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.measure.Money;
import bitterend.packing.Packer;
import bitterend.packing.strategy.FullStrategy;
import bitterend.packing.strategy.GreedyStrategy;
import java.util.List;
import org.apache.commons.math3.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Jobs whose shares are known from the literature or by reckoning on paper. */
final class PublishedSharesTest {
    private static final Packer GREEDY = new GreedyStrategy();

    /** Gilmore and Gomory, Operations Research 9 (1961) 849-859: reels of 5, 6, 9 at 6, 7, 10. */
    static Job gilmoreAndGomory() {
        return Job.classical()
                .reel(5, 6)
                .reel(6, 7)
                .reel(9, 10)
                .party("S", 2, 20)
                .party("M", 3, 10)
                .party("L", 4, 20);
    }

    private static long minor(CostRange cost) {
        assertTrue(cost.isExact());
        return cost.found() / Cost.MILLIS_PER_MINOR;
    }

    @Test
    void gilmoreAndGomory_costs170() {
        RopeShares shared = gilmoreAndGomory().shared(GREEDY);
        assertEquals(new Money(170).fine(), shared.cost());
        assertTrue(shared.isProvenBest());
        assertEquals(50, shared.packing().places().size());
    }

    /** All dual prices that prove the cost give a stable split, whichever of them the packer finds. */
    @Test
    void gilmoreAndGomory_sharesByDualPricesAreStableThemselves() {
        RopeShares shared = gilmoreAndGomory().shared(FullStrategy.patternsAlone());
        assertEquals(new Money(170).fine(), shared.cost());
        assertEquals("1", shared.factor().orElseThrow().printed());
        assertEquals(shared.byDuals(), shared.fair());
    }

    @Test
    void gilmoreAndGomory_groupsPayWhatIsKnown() {
        Job job = gilmoreAndGomory();
        assertEquals(48, minor(job.alone(GREEDY, 0)));
        assertEquals(34, minor(job.alone(GREEDY, 1)));
        assertEquals(100, minor(job.alone(GREEDY, 2)));
        assertEquals(79, minor(job.alone(GREEDY, 0, 1)));
        assertEquals(140, minor(job.alone(GREEDY, 0, 2)));
        assertEquals(134, minor(job.alone(GREEDY, 1, 2)));
    }

    @Test
    void gilmoreAndGomory_hasAStableSplit() {
        Stability stability = gilmoreAndGomory().shared(GREEDY).stability();
        List<BigFraction> shares =
                assertInstanceOf(Stability.Stable.class, stability).shares();
        BigFraction s = shares.get(0);
        BigFraction m = shares.get(1);
        BigFraction l = shares.get(2);
        assertEquals(thousands(170), s.add(m).add(l));
        assertTrue(s.compareTo(thousands(48)) <= 0 && m.compareTo(thousands(34)) <= 0);
        assertTrue(l.compareTo(thousands(100)) <= 0);
        assertTrue(s.add(m).compareTo(thousands(79)) <= 0);
        assertTrue(s.add(l).compareTo(thousands(140)) <= 0);
        assertTrue(m.add(l).compareTo(thousands(134)) <= 0);
    }

    /** Shares by length are 45.33, 34.00, 90.67: S and M together would pay 79.33, and 79 alone. */
    @Test
    void gilmoreAndGomory_lengthIsNoStableMeasure() {
        Job job = gilmoreAndGomory();
        long apart = 45_333 + 34_000;
        assertTrue(job.alone(GREEDY, 0, 1).found() < apart);
    }

    /** Three customers with one piece of 2 each on reels of 5: two fit a reel, so any two would leave. */
    @Test
    void threeTwosOnFive_haveNoStableSplit() {
        RopeShares shared = Job.classical()
                .reel(5, 1)
                .party("A", 2, 1)
                .party("B", 2, 1)
                .party("C", 2, 1)
                .shared(GREEDY);
        Stability.NoneExists none = assertInstanceOf(Stability.NoneExists.class, shared.stability());
        assertEquals(new BigFraction(1500), none.together());
        assertEquals(new Money(2).fine(), shared.cost());
        assertEquals(3, none.groups().size());
    }

    /** Reels of 10, pieces of 6, 6 and 4: the third rides along for nothing. */
    @Test
    void sixSixFourOnTen_areSharedOneOneNothing() {
        RopeShares shared = Job.classical()
                .reel(10, 1)
                .party("A", 6, 1)
                .party("B", 6, 1)
                .party("C", 4, 1)
                .shared(GREEDY);
        Stability.Stable stable = assertInstanceOf(Stability.Stable.class, shared.stability());
        assertEquals(List.of(thousands(1), thousands(1), thousands(0)), stable.shares());
        assertEquals(List.of(new Money(1), new Money(1), new Money(0)), shared.coins());
    }

    private static BigFraction thousands(long minor) {
        return new BigFraction(minor * 1000);
    }
}
