package bitterend.packing.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.PlanPrice;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is kept up while pieces come and go, beside what is reckoned anew from the whole packing each time. */
final class RackStateTest {
    private static final int STEPS = 120;

    /** A rack on which pieces are placed and taken off at random, wherever they fit. */
    private static final class Random {
        private final Workbench bench;
        private final RackState rack;
        private final SplittableRandom dice;
        private final String name;

        Random(long seed) {
            bench = new Workbench(RandomShop.of(seed, ShopSize.DAY));
            rack = new RackState(bench);
            dice = new SplittableRandom(seed);
            name = "seed " + seed;
        }

        void step() {
            int piece = dice.nextInt(bench.pieces);
            int[] fit = fitting(piece);
            if (rack.isPlanned(piece) && dice.nextInt(3) > 0) {
                rack.remove(piece);
            } else if (!rack.isPlanned(piece) && fit.length > 0) {
                rack.place(piece, fit[dice.nextInt(fit.length)]);
            }
        }

        int[] fitting(int piece) {
            return IntStream.range(0, bench.runs)
                    .filter(run -> rack.fits(piece, run))
                    .toArray();
        }

        long fromNothing() {
            return bench.prices().of(rack.packing()).millis();
        }

        /** The pieces of an order on the rope of a lot, counted lot by lot. */
        Map<Integer, Integer> lotsOf(int order, int rope) {
            Map<Integer, Integer> counts = new TreeMap<>();
            for (int piece = 0; piece < bench.pieces; piece++) {
                if (bench.pieceTable.orderOf[piece] == order && rack.isPlanned(piece)) {
                    int lot = bench.runTable.lotOf[rack.runOf(piece)];
                    if (bench.runTable.ropeOfLot[lot] == rope) {
                        counts.merge(lot, 1, Integer::sum);
                    }
                }
            }
            return counts;
        }

        int orders() {
            return bench.pieceTable.piecesOfOrder.length;
        }

        int lots() {
            return bench.runTable.ropeOfLot.length;
        }
    }

    private interface Story {
        void on(Random random);
    }

    private static void forEachStep(int seeds, Story story) {
        for (long seed = 0; seed < seeds; seed++) {
            Random random = new Random(seed);
            for (int step = 0; step < STEPS; step++) {
                random.step();
                story.on(random);
            }
        }
    }

    @Test
    void cost_isThatOfTheWholePacking() {
        long[] sums = new long[2];
        forEachStep(20, random -> {
            RackState rack = random.rack;
            PlanPrice prices = random.bench.prices();
            assertEquals(random.fromNothing(), rack.millis(), random.name);
            assertEquals(prices.acrossReels(rack.packing()).millis(), rack.acrossReels(), random.name);
            sums[0] += rack.acrossReels();
            sums[1] += rack.millis() - rack.leastMillis();
        });
        assertTrue(sums[0] > 0 && sums[1] > 0, Arrays.toString(sums));
    }

    /** Asked twice: the second answer may be one that is remembered. */
    @Test
    void addedCost_isTheDifferenceThatThePieceMakes() {
        forEachStep(12, random -> {
            RackState rack = random.rack;
            int piece = random.dice.nextInt(random.bench.pieces);
            int[] fit = random.fitting(piece);
            if (rack.isPlanned(piece) || fit.length == 0) {
                return;
            }
            int run = fit[random.dice.nextInt(fit.length)];
            long before = random.fromNothing();
            long told = rack.addedMillis(piece, run);
            assertEquals(told, rack.addedMillis(piece, run), random.name);
            assertEquals(told, rack.changeMillis(piece, run), random.name);
            assertEquals(told, rack.addedMillis(new int[] {piece}, run), random.name);
            rack.place(piece, run);
            assertEquals(random.fromNothing() - before, told, random.name);
        });
    }

    @Test
    void addedCostOfSeveral_isTheDifferenceThatTheyMakeTogether() {
        int[] asked = new int[1];
        forEachStep(12, random -> {
            RackState rack = random.rack;
            int run = random.dice.nextInt(random.bench.runs);
            long before = random.fromNothing();
            List<Integer> together = new ArrayList<>();
            for (int piece = 0; piece < random.bench.pieces && together.size() < 3; piece++) {
                if (!rack.isPlanned(piece) && rack.fits(piece, run)) {
                    rack.place(piece, run);
                    together.add(piece);
                }
            }
            long after = random.fromNothing();
            together.forEach(rack::remove);
            if (together.isEmpty()) {
                return;
            }
            int[] pieces = together.stream().mapToInt(Integer::intValue).toArray();
            assertEquals(after - before, rack.addedMillis(pieces, run), random.name);
            asked[0] += pieces.length == 3 ? 1 : 0;
        });
        assertTrue(asked[0] > 100, "so many threes: " + asked[0]);
    }

    @Test
    void changedCost_isTheDifferenceBetweenTheTwoRuns() {
        forEachStep(12, random -> {
            RackState rack = random.rack;
            int piece = random.dice.nextInt(random.bench.pieces);
            int[] fit = random.fitting(piece);
            if (!rack.isPlanned(piece) || fit.length == 0) {
                return;
            }
            int run = fit[random.dice.nextInt(fit.length)];
            long before = random.fromNothing();
            long told = rack.changeMillis(piece, run);
            assertEquals(before, random.fromNothing(), random.name);
            rack.remove(piece);
            rack.place(piece, run);
            assertEquals(random.fromNothing() - before, told, random.name);
        });
    }

    @Test
    void whatIsLeft_isWhatThePiecesLeave() {
        forEachStep(12, random -> {
            RackState rack = random.rack;
            long squares = 0;
            for (int run = 0; run < random.bench.runs; run++) {
                int at = run;
                long taken = rack.onRun(run).stream()
                        .mapToLong(piece -> random.bench.sizeOn(piece, at) + random.bench.loss(at))
                        .sum();
                assertEquals(random.bench.runTable.length[run] - taken, rack.free(run), random.name);
                assertEquals(rack.onRun(run).size(), rack.load(run).pieces(), random.name);
                squares += (rack.free(run) / 10) * (rack.free(run) / 10);
            }
            assertEquals(squares, rack.rope(), random.name);
            long[] undone = new long[rack.undone().length];
            for (int piece = 0; piece < random.bench.pieces; piece++) {
                if (!rack.isPlanned(piece)) {
                    undone[random.bench.pieceTable.urgency[piece] - 1] += random.bench.pieceTable.weight[piece];
                }
            }
            assertEquals(Arrays.toString(undone), Arrays.toString(rack.undone()), random.name);
        });
    }

    /** What is cut from one run goes onto another of as much rope or more, the last cut at its very end. */
    @Test
    void contents_areHeldByARunThatIsLongEnough() {
        int[] held = new int[2];
        forEachStep(12, random -> {
            RackState rack = random.rack;
            int run = random.dice.nextInt(random.bench.runs);
            int other = random.dice.nextInt(random.bench.runs);
            if (random.bench.ropeOf(run) != random.bench.ropeOf(other)
                    || rack.onRun(other).isEmpty()) {
                return;
            }
            long loss = random.bench.loss(run);
            long pieces = rack.onRun(other).stream()
                    .mapToLong(piece -> random.bench.sizeOn(piece, other) + loss)
                    .sum();
            boolean holds = pieces - loss <= random.bench.runTable.length[run];
            assertEquals(holds, rack.wouldHold(run, other), random.name);
            held[holds ? 1 : 0]++;
        });
        assertTrue(held[0] > 10 && held[1] > 10, Arrays.toString(held));
    }

    @Test
    void restored_isAsItWas() {
        forEachStep(6, random -> {
            int[] places = random.rack.places();
            long millis = random.rack.millis();
            for (int i = 0; i < 10; i++) {
                random.step();
            }
            random.rack.restore(places);
            assertEquals(Arrays.toString(places), Arrays.toString(random.rack.places()), random.name);
            assertEquals(millis, random.rack.millis(), random.name);
            assertEquals(
                    millis, RackState.of(random.bench, random.rack.packing()).millis(), random.name);
        });
    }

    @Test
    void ordersOverLots_areCountedAsTheyLie() {
        int[] seen = new int[4];
        forEachStep(12, random -> {
            OrderLots lots = random.rack.lots;
            long splits = 0;
            long closeness = 0;
            for (int order = 0; order < random.orders(); order++) {
                for (int rope = 0; rope < random.bench.runTable.ropeOfLot.length; rope++) {
                    Map<Integer, Integer> counts = random.lotsOf(order, rope);
                    splits += Math.max(0, counts.size() - 1);
                    closeness += counts.values().stream()
                            .mapToLong(n -> (long) n * n)
                            .sum();
                }
                for (int lot = 0; lot < random.lots(); lot++) {
                    Map<Integer, Integer> counts = random.lotsOf(order, random.bench.runTable.ropeOfLot[lot]);
                    int here = counts.getOrDefault(lot, 0);
                    int all = counts.values().stream().mapToInt(n -> n).sum();
                    IntPredicate isSeen = kind -> seen[kind]++ >= 0;
                    assertEquals(here > 0 && isSeen.test(0), lots.uses(order, lot), random.name);
                    assertEquals(here == 0 && all > 0 && isSeen.test(1), lots.wouldSplit(order, lot), random.name);
                    assertEquals(here == 1 && all > 1 && isSeen.test(2), lots.isStray(order, lot), random.name);
                    assertEquals(all > here && isSeen.test(3), lots.isSplit(order, lot), random.name);
                }
            }
            assertEquals(splits, lots.splits(), random.name);
            assertEquals(closeness, lots.closeness(), random.name);
        });
        assertTrue(Arrays.stream(seen).allMatch(n -> n > 100), Arrays.toString(seen));
    }

    /** Some of the pieces that lie nowhere yet come off one lot and the others off another: each way is counted anew. */
    @Test
    void chargeForDividing_isWhatEachWayCostsInLots() {
        boolean[] differs = new boolean[2];
        forEachStep(12, random -> {
            OrderLots lots = random.rack.lots;
            int order = random.dice.nextInt(random.orders());
            int one = random.dice.nextInt(random.lots());
            int other = random.dice.nextInt(random.lots());
            if (random.bench.pieceTable.piecesOfOrder[order] < 16
                    || random.bench.runTable.ropeOfLot[one] != random.bench.runTable.ropeOfLot[other]) {
                return;
            }
            long bare = lots.splits();
            int all = more(lots, order, bare, one);
            int none = more(lots, order, bare, other);
            int both = more(lots, order, bare, one, other);
            assertEquals(
                    new LotCharge(all, Math.max(both, Math.max(all, none)), none),
                    lots.charge(order, one, other, true),
                    random.name);
            LotCharge alone = lots.charge(order, one, other, false);
            assertEquals(new LotCharge(all, Math.max(all, none), none), alone, random.name);
            assertEquals(Math.min(all, none), alone.least(), random.name);
            assertEquals(all != none, alone.differs(), random.name);
            assertEquals(
                    new LotCharge(all - alone.least(), Math.max(all, none) - alone.least(), none - alone.least()),
                    alone.aboveLeast(),
                    random.name);
            differs[all != none ? 1 : 0] = true;
            assertEquals(bare, lots.splits(), random.name);
        });
        assertTrue(differs[0] && differs[1], Arrays.toString(differs));
    }

    private static int more(OrderLots lots, int order, long bare, int... taken) {
        for (int lot : taken) {
            lots.add(order, lot);
        }
        int more = (int) (lots.splits() - bare);
        for (int lot : taken) {
            lots.remove(order, lot);
        }
        return more;
    }
}
