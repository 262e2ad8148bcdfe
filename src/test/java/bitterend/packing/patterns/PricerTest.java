package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The best way to draw for prices, beside every pattern there is, and what the master program makes of it. */
final class PricerTest {
    private static final int SHOPS = 2 * Integer.getInteger("shops", 60);

    @Test
    void net_isThatOfTheBestPattern_andPatternsBeatWhatIsNeeded() {
        int offered = 0;
        for (int seed = 0; seed < SHOPS; seed++) {
            Random random = new Random(seed);
            Instance instance = new Normaliser(RandomShops.problem(random, 1)).instance();
            List<Pattern> all = AllPatterns.of(instance);
            long scale = 1L + random.nextInt(3);
            long[] price = random.longs(instance.items, -10, 60).toArray();
            long[] need = random.longs(instance.types.length, -30, 40).toArray();
            Pricer.Offers offers =
                    new Pricer(instance).price(price, scale, instance.demand, need, false, Budget.endless());
            assertTrue(offers.safe);
            for (ReelType type : instance.types) {
                long best = all.stream()
                        .filter(pattern -> pattern.type == type.index)
                        .mapToLong(pattern -> net(pattern, price, scale))
                        .max()
                        .orElse(Long.MIN_VALUE);
                long found = offers.reducedProfit[type.index];
                assertTrue(found >= best, "seed " + seed + " kind " + type.index + ": " + found + " for " + best);
                if (type.single()) {
                    assertEquals(Math.max(best, need[type.index]), found, "seed " + seed + " kind " + type.index);
                }
            }
            for (Pattern pattern : offers.patterns) {
                long net = net(pattern, price, scale);
                assertTrue(net <= offers.reducedProfit[pattern.type], "seed " + seed);
                if (instance.types[pattern.type].single()) {
                    assertTrue(net > need[pattern.type], "seed " + seed + ": " + net);
                    assertEquals(offers.reducedProfit[pattern.type], net, "seed " + seed);
                    offered++;
                }
                assertTrue(pattern.timesWithin(instance.demand) > 0, "seed " + seed);
            }
        }
        assertTrue(offered > SHOPS / 4, "offered " + offered);
    }

    private static long net(Pattern pattern, long[] price, long scale) {
        long worth = 0;
        for (int t = 0; t < pattern.item.length; t++) {
            worth += Math.max(0, price[pattern.item[t]]) * pattern.count[t];
        }
        return worth - scale * pattern.cost;
    }

    @Test
    void aHastySearch_offersMoreThanOnePatternOfOneKind_eachOfOtherItems() {
        Instance instance =
                new Normaliser(PatternProblem.oneLength(10, List.of(6L, 5L, 4L, 3L), List.of(1, 2, 1, 3))).instance();
        long[] price = {70, 60, 50, 40};
        Pricer.Offers offers =
                new Pricer(instance).price(price, 100, instance.demand, new long[1], true, Budget.endless());
        assertTrue(offers.safe);
        assertEquals(
                List.of("[2, 3]", "[1]"),
                offers.patterns.stream()
                        .map(pattern -> Arrays.toString(pattern.item))
                        .toList());
        assertEquals(30, offers.reducedProfit[0]);
    }

    @Test
    void boundOfAProgram_neverFalls_andEndsWhereTheProgramDoes() {
        int converged = 0;
        for (int seed = 0; seed < SHOPS; seed++) {
            Random random = new Random(seed);
            Instance instance = new Normaliser(TreeShops.all(random, 5, 9)).instance();
            Pricer pricer = new Pricer(instance);
            MaterialBound material = new MaterialBound(instance, pricer);
            Optional<Bound> given =
                    material.bound(Rejection.NEVER, new Scaling(instance, Rejection.NEVER).scale, Budget.endless());
            Incumbent start = new Incumbent(instance, progress -> {});
            new InitialPlans(instance, start, 1, Budget.endless()).run(2);
            Master master = new Master(instance, pricer, Rejection.NEVER, start.plan(), 1);
            given.ifPresent(bound -> master.startFrom(bound, material.reducedProfit()));
            int rounds = random.nextBoolean() ? 1 + random.nextInt(12) : 10_000;
            master.solve(Long.MAX_VALUE / 4, rounds, false, Budget.endless());
            String where = "seed " + seed;
            assertFalse(master.own().higherThan(master.bound()), where);
            given.ifPresent(bound -> assertFalse(bound.higherThan(master.bound()), where));
            if (master.converged() && Arrays.stream(instance.types).allMatch(ReelType::single)) {
                double proven =
                        (double) master.bound().numerator() / master.bound().scale();
                assertEquals(master.value(), proven, 1e-3 + 1e-6 * master.value(), where);
                assertTrue(master.unmet() < 1e-6, where);
                converged++;
            }
        }
        assertTrue(converged > SHOPS / 4, "converged " + converged);
    }
}
