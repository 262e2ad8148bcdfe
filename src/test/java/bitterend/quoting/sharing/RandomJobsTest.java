package bitterend.quoting.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Money;
import bitterend.packing.Packer;
import bitterend.packing.strategy.FullStrategy;
import bitterend.packing.strategy.GreedyStrategy;
import java.math.BigInteger;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BiConsumer;
import org.apache.commons.math3.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** What must hold of every job, whatever its pieces, reels and prices. */
final class RandomJobsTest {
    /** Never so few that a kind of job which is asked for does not turn up. */
    private static final int JOBS = Math.max(20, Integer.getInteger("shops", 200) / 4);

    private static final Packer FULL = FullStrategy.patternsAlone();

    /** A job of a few small parties; every kind of price and value curve turns up. */
    private static Job job(long seed, int parties) {
        SplittableRandom dice = new SplittableRandom(seed);
        Job job = dice.nextBoolean() ? Job.classical() : Job.of(dice.nextInt(0, 40), dice.nextInt(500, 4000));
        job.opening(dice.nextInt(0, 3) * 200L);
        int sizes = dice.nextInt(1, 4);
        for (int i = 0; i < sizes; i++) {
            long length = dice.nextInt(40, 120) * 100L;
            job.reel(length, length * dice.nextInt(80, 120) / 100 + 1);
        }
        for (int i = 0; i < parties; i++) {
            job.party("P" + i, dice.nextInt(3, 40) * 100L, dice.nextInt(1, 4));
        }
        return job;
    }

    private static void forEachJob(BiConsumer<Job, RopeShares> check) {
        for (long seed = 0; seed < JOBS; seed++) {
            Job job = job(seed, (int) (2 + seed % 4));
            Packer packer = seed % 3 == 0 ? new GreedyStrategy() : FULL;
            try {
                check.accept(job, job.shared(packer));
            } catch (AssertionError | RuntimeException fault) {
                throw new AssertionError("job of seed " + seed, fault);
            }
        }
    }

    private static BigFraction sum(List<BigFraction> shares) {
        return shares.stream().reduce(BigFraction.ZERO, BigFraction::add);
    }

    private static BigFraction paid(List<BigFraction> shares, Group group) {
        return group.places().mapToObj(shares::get).reduce(BigFraction.ZERO, BigFraction::add);
    }

    @Test
    void shares_addUpToTheCostExactlyAndToTheCoin() {
        forEachJob((job, shared) -> {
            BigFraction cost = new BigFraction(BigInteger.valueOf(shared.cost().millis()));
            assertEquals(cost, sum(shared.byDuals()));
            assertEquals(cost, sum(shared.fair()));
            assertEquals(shared.cost().rounded(), shared.coins().stream().reduce(Money.ZERO, Money::plus));
        });
    }

    @Test
    void noGroup_paysMoreThanThePrintedFactorTimesItsCostAlone() {
        forEachJob((job, shared) -> {
            BigFraction factor = new BigFraction(
                    new java.math.BigDecimal(shared.factor().orElseThrow().printed())
                            .movePointRight(6)
                            .toBigIntegerExact(),
                    BigInteger.TEN.pow(6));
            for (Group group : Group.proper(job.parties().size())) {
                CostRange alone = job.alone(FULL, group.places().toArray());
                assertTrue(alone.isExact());
                BigFraction most = factor.multiply(BigInteger.valueOf(alone.found()));
                assertTrue(paid(shared.byDuals(), group).compareTo(most) <= 0, group + " of " + shared);
            }
        });
    }

    @Test
    void stableSplit_isLeftByNoGroupAndObjectionsAreBalanced() {
        int[] found = new int[2];
        forEachJob((job, shared) -> {
            if (shared.stability() instanceof Stability.Stable stable) {
                found[0]++;
                for (Group group : Group.proper(job.parties().size())) {
                    BigFraction alone = new BigFraction(BigInteger.valueOf(
                            job.alone(FULL, group.places().toArray()).found()));
                    assertTrue(paid(stable.shares(), group).compareTo(alone) <= 0, group + " of " + shared);
                }
            } else if (shared.stability() instanceof Stability.NoneExists none) {
                found[1]++;
                assertTrue(none.together()
                                .compareTo(new BigFraction(
                                        BigInteger.valueOf(shared.cost().millis())))
                        < 0);
                for (Party party : job.parties()) {
                    assertEquals(
                            BigFraction.ONE,
                            sum(none.groups().stream()
                                    .filter(group -> group.parties().contains(party.name()))
                                    .map(Stability.Objection::weight)
                                    .toList()));
                }
            } else {
                throw new AssertionError(shared.stability());
            }
        });
        assertTrue(found[0] > 0 && found[1] > 0, found[0] + " stable, " + found[1] + " not");
    }

    /** The exact table against the packer's own search and bound: neither may beat the other. */
    @Test
    void exactTable_agreesWithPackerAndBound() {
        for (long seed = 0; seed < JOBS; seed++) {
            Job job = job(seed, 3);
            CostRange exact = job.alone(FULL, 0, 1, 2);
            List<bitterend.demand.Piece> pieces = job.parties().stream()
                    .flatMap(party -> party.pieces().stream())
                    .toList();
            CostRange packed = CostRange.of(
                    FULL.pack(
                            job.rope().problem(pieces, Job.DAY),
                            bitterend.packing.Effort.of(java.time.Duration.ofSeconds(1))),
                    pieces.size());
            assertTrue(packed.proven() <= exact.found(), "seed " + seed + ": bound " + packed + " above " + exact);
            assertTrue(exact.found() <= packed.found(), "seed " + seed + ": packing " + packed + " below " + exact);
        }
    }

    @Test
    void takingAPartyAway_neverRaisesTheCost() {
        for (long seed = 0; seed < JOBS; seed++) {
            Job job = job(seed, 3);
            long all = job.alone(FULL, 0, 1, 2).found();
            for (int[] fewer : new int[][] {{0, 1}, {0, 2}, {1, 2}}) {
                assertTrue(job.alone(FULL, fewer).found() <= all, "seed " + seed);
            }
        }
    }

    @Test
    void anotherReelSize_neverRaisesTheCost() {
        for (long seed = 0; seed < JOBS; seed++) {
            long before = job(seed, 3).alone(FULL, 0, 1, 2).found();
            long after = job(seed, 3).reel(7_777, 7_000).alone(FULL, 0, 1, 2).found();
            assertTrue(after <= before, "seed " + seed);
        }
    }
}
