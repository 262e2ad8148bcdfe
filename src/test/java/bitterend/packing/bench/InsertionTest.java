package bitterend.packing.bench;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.bench.Insertion.Choice;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Where a job is put, beside every run that it might have been put on, each priced as a whole packing. */
final class InsertionTest {
    private static final int SHOPS = 20;

    private static final class Shop {
        private final Workbench bench;
        private final RackState rack;
        private final Insertion insertion;
        private final SplittableRandom dice;
        private final String name;

        Shop(long seed) {
            bench = new Workbench(RandomShop.of(seed, ShopSize.DAY));
            rack = new RackState(bench);
            dice = new SplittableRandom(seed);
            insertion = new Insertion(rack, bench.asListed(), dice);
            name = "seed " + seed;
        }

        /** Jobs in any order. */
        List<Integer> jobs() {
            List<Integer> jobs =
                    new ArrayList<>(IntStream.range(0, bench.jobs()).boxed().toList());
            Insertion.shuffle(jobs, dice);
            return jobs;
        }

        int[] fitting(int piece) {
            return IntStream.range(0, bench.runs)
                    .filter(run -> rack.fits(piece, run))
                    .toArray();
        }

        long left(int piece, int run) {
            return rack.free(run) - bench.sizeOn(piece, run);
        }

        long costWith(int piece, int run) {
            rack.place(piece, run);
            long cost = bench.prices().of(rack.packing()).millis();
            rack.remove(piece);
            return cost;
        }
    }

    /** What each choice asks of the run of a piece by itself, among all that would take it. */
    private static void assertBest(Shop shop, int piece, int chosen, int[] fitting, Choice choice) {
        Comparator<Integer> byLeft = Comparator.comparing(run -> shop.left(piece, run));
        Comparator<Integer> byCost = Comparator.comparing(run -> shop.costWith(piece, run));
        Comparator<Integer> order = choice == Choice.TIGHTEST ? byLeft : byCost.thenComparing(byLeft);
        int best = Arrays.stream(fitting).boxed().min(order).orElseThrow();
        assertEquals(0, order.compare(best, chosen), shop.name + ": " + best + " before " + chosen);
    }

    @ParameterizedTest
    @EnumSource(
            value = Choice.class,
            names = {"TIGHTEST", "CHEAPEST", "CHEAPEST_EACH"})
    void piece_comesOntoTheBestRunOfAll(Choice choice) {
        int chosen = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            Shop shop = new Shop(seed);
            for (int job : shop.jobs()) {
                int piece = shop.bench.piecesOf(job)[0];
                int[] fitting = shop.fitting(piece);
                if (shop.bench.isSet(job)) {
                    continue;
                }
                assertEquals(fitting.length > 0, shop.insertion.insert(job, choice), shop.name);
                if (fitting.length > 0) {
                    int run = shop.rack.runOf(piece);
                    shop.rack.remove(piece);
                    assertBest(shop, piece, run, fitting, choice);
                    shop.rack.place(piece, run);
                    chosen += fitting.length > 1 ? 1 : 0;
                }
            }
        }
        assertTrue(chosen > 100, "so many had a choice: " + chosen);
    }

    @Test
    void first_isTheFirstThatIsListed() {
        for (long seed = 0; seed < SHOPS; seed++) {
            Shop shop = new Shop(seed);
            for (int job : shop.jobs()) {
                int piece = shop.bench.piecesOf(job)[0];
                int[] fitting = shop.fitting(piece);
                if (!shop.bench.isSet(job) && shop.insertion.insert(job, Choice.FIRST)) {
                    int run = shop.rack.runOf(piece);
                    int[] homes = shop.bench.asListed().of(piece);
                    int listed = Arrays.stream(homes)
                            .filter(home -> Arrays.stream(fitting).anyMatch(fit -> fit == home))
                            .findFirst()
                            .orElseThrow();
                    assertEquals(listed, run, shop.name);
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Choice.class)
    void set_comesTogetherOrNotAtAll(Choice choice) {
        int[] sets = new int[2];
        for (long seed = 0; seed < 3 * SHOPS; seed++) {
            Shop shop = new Shop(seed);
            for (int job : shop.jobs()) {
                int[] before = shop.rack.places();
                boolean done = shop.insertion.insert(job, choice);
                int[] after = shop.rack.places();
                for (int piece = 0; piece < after.length; piece++) {
                    if (shop.bench.jobOf(piece) == job && done) {
                        assertNotEquals(Workbench.NONE, after[piece], shop.name);
                        assertTrue(shop.rack.free(after[piece]) >= -shop.bench.loss(after[piece]), shop.name);
                    } else {
                        assertEquals(before[piece], after[piece], shop.name);
                    }
                }
                if (shop.bench.isSet(job)) {
                    sets[done ? 1 : 0]++;
                    assertEquals(
                            done ? 1 : 0,
                            Arrays.stream(shop.bench.piecesOf(job))
                                    .map(shop.rack::runOf)
                                    .filter(run -> run != Workbench.NONE)
                                    .map(run -> shop.bench.holderOf(job, run))
                                    .distinct()
                                    .count(),
                            shop.name);
                }
            }
        }
        assertTrue(sets[0] > 10 && sets[1] > 10, Arrays.toString(sets));
    }

    /** Of all lots or reels that take the set, one piece after the other, none would have made the packing cheaper. */
    @ParameterizedTest
    @EnumSource(
            value = Choice.class,
            names = {"CHEAPEST", "CHEAPEST_EACH"})
    void set_comesOntoTheCheapestOfItsPlaces(Choice choice) {
        int chosen = 0;
        for (long seed = 0; seed < 3 * SHOPS; seed++) {
            Shop shop = new Shop(seed);
            for (int job : shop.jobs()) {
                long least = Long.MAX_VALUE;
                int places = 0;
                for (int[] holder :
                        shop.bench.isSet(job) ? shop.bench.asListed().holders(job) : List.<int[]>of()) {
                    if (shop.insertion.insertOn(job, holder, choice == Choice.CHEAPEST ? Choice.TIGHTEST : choice)) {
                        least = Math.min(
                                least,
                                shop.bench.prices().of(shop.rack.packing()).millis());
                        shop.rack.removeJob(job);
                        places++;
                    }
                }
                boolean done = shop.insertion.insert(job, choice);
                if (shop.bench.isSet(job)) {
                    assertEquals(places > 0, done, shop.name);
                }
                if (places > 0) {
                    assertEquals(least, shop.rack.millis(), shop.name);
                    chosen += places > 1 ? 1 : 0;
                }
            }
        }
        assertTrue(chosen > 20, "so many had a choice: " + chosen);
    }

    /** All in one go is the same as one after the other, though what cannot have room is not asked again. */
    @ParameterizedTest
    @EnumSource(
            value = Choice.class,
            names = {"FIRST", "TIGHTEST", "CHEAPEST"})
    void all_areInsertedAsOneByOne(Choice choice) {
        int left = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            Shop together = new Shop(seed);
            Shop alone = new Shop(seed);
            List<Integer> jobs = together.jobs();
            for (int round = 0; round < 2; round++) {
                List<Integer> without = together.insertion.insertAll(jobs, choice);
                List<Integer> refused = jobs.stream()
                        .filter(job -> !alone.insertion.insert(job, choice))
                        .toList();
                assertEquals(refused, without, together.name);
                assertArrayEquals(alone.rack.places(), together.rack.places(), together.name);
                left += without.size();
                // room again for what had none
                for (Shop shop : List.of(together, alone)) {
                    jobs.stream()
                            .filter(job -> job % 2 == 0 && shop.rack.isJobPlanned(job))
                            .forEach(shop.rack::removeJob);
                }
                jobs = jobs.stream()
                        .filter(job -> !together.rack.isJobPlanned(job))
                        .toList();
            }
        }
        assertTrue(left > 20, "so many found no room: " + left);
    }
}
