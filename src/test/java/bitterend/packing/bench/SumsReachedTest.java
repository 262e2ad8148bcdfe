package bitterend.packing.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Sums and lots that are come to, beside every subset of the portions. */
final class SumsReachedTest {
    private static final int SHOPS = Integer.getInteger("shops", 60);
    private static final int LEVELS = 3;

    /** Portions order by order, and what each order pays above the least it must. */
    private record Case(List<Integer> cells, List<Integer> endOfOrder, List<LotCharge> charges, int most) {
        static Case of(long seed) {
            SplittableRandom dice = new SplittableRandom(seed);
            List<Integer> cells = new ArrayList<>();
            List<Integer> ends = new ArrayList<>();
            List<LotCharge> charges = new ArrayList<>();
            int orders = 1 + dice.nextInt(4);
            for (int order = 0; order < orders; order++) {
                int portions = 1 + dice.nextInt(3);
                for (int i = 0; i < portions; i++) {
                    cells.add(1 + dice.nextInt(90));
                }
                ends.add(cells.size());
                int all = dice.nextInt(2);
                int none = all == 0 ? dice.nextInt(2) : 0;
                charges.add(new LotCharge(all, Math.max(Math.max(all, none), dice.nextInt(2)), none));
            }
            return new Case(cells, ends, charges, dice.nextInt(300));
        }

        SumsReached reached() {
            SumsReached sums = new SumsReached();
            sums.begin(most, LEVELS);
            int first = 0;
            for (int order = 0; order < charges.size(); order++) {
                int from = sums.last();
                int all = 0;
                for (int i = first; i < endOfOrder.get(order); i++) {
                    sums.add(i, cells.get(i));
                    all += cells.get(i);
                }
                if (charges.get(order).differs()) {
                    sums.charge(first, endOfOrder.get(order), all, from, charges.get(order));
                }
                first = endOfOrder.get(order);
            }
            sums.end();
            return sums;
        }

        int sumOf(int subset) {
            int sum = 0;
            for (int i = 0; i < cells.size(); i++) {
                sum += (subset >> i & 1) * cells.get(i);
            }
            return sum;
        }

        /** The lots that a subset pays for. */
        int lotsOf(int subset) {
            int lots = 0;
            int first = 0;
            for (int order = 0; order < charges.size(); order++) {
                int width = endOfOrder.get(order) - first;
                int part = subset >> first & ((1 << width) - 1);
                LotCharge charge = charges.get(order);
                lots += part == 0 ? charge.none() : part == (1 << width) - 1 ? charge.all() : charge.some();
                first += width;
            }
            return lots;
        }

        /** The fewest lots for each sum. */
        TreeMap<Integer, Integer> fewest() {
            TreeMap<Integer, Integer> fewest = new TreeMap<>();
            for (int subset = 0; subset < 1 << cells.size(); subset++) {
                if (sumOf(subset) <= most && lotsOf(subset) < LEVELS) {
                    fewest.merge(sumOf(subset), lotsOf(subset), Math::min);
                }
            }
            return fewest;
        }
    }

    @Test
    void sums_areThoseOfTheSubsets_eachWithItsFewestLots() {
        for (long seed = 0; seed < 10L * SHOPS; seed++) {
            Case each = Case.of(seed);
            SumsReached sums = each.reached();
            TreeMap<Integer, Integer> found = new TreeMap<>();
            for (int level = 0; level < LEVELS; level++) {
                int sum = sums.next(level, 0);
                while (sum >= 0 && sum <= each.most()) {
                    assertEquals(-1, found.getOrDefault(sum, -1), "twice, seed " + seed);
                    found.put(sum, level);
                    sum = sums.next(level, sum + 1);
                }
            }
            assertEquals(each.fewest(), found, "seed " + seed);
        }
    }

    @Test
    void wayBack_comesToTheSum_withThoseLots() {
        for (long seed = 0; seed < 10L * SHOPS; seed++) {
            Case each = Case.of(seed);
            SumsReached sums = each.reached();
            SplittableRandom dice = new SplittableRandom(seed);
            for (var reached : each.fewest().entrySet()) {
                int subset = subset(sums.back(
                        reached.getKey(), reached.getValue(), each.cells().size(), dice));
                assertEquals(reached.getKey(), each.sumOf(subset), "seed " + seed);
                assertEquals(reached.getValue(), each.lotsOf(subset), "seed " + seed);
            }
        }
    }

    private static int subset(boolean[] in) {
        int subset = 0;
        for (int i = 0; i < in.length; i++) {
            subset |= in[i] ? 1 << i : 0;
        }
        return subset;
    }

    /** Of three portions alike any one, of an order's two any one or both at a lot more: each way is met by chance. */
    @Test
    void severalWays_areAllTaken() {
        Case alike = new Case(
                List.of(5, 5, 5),
                List.of(1, 2, 3),
                List.of(LotCharge.NOTHING, LotCharge.NOTHING, LotCharge.NOTHING),
                15);
        assertEquals(Set.of(1, 2, 4), ways(alike, 5, 0));
        Case order = new Case(List.of(5, 5, 10), List.of(2, 3), List.of(new LotCharge(0, 1, 0), LotCharge.NOTHING), 20);
        assertEquals(Set.of(3, 4), ways(order, 10, 0));
        assertEquals(Set.of(1, 2), ways(order, 5, 1));
        assertEquals(Set.of(3, 4), ways(order, 10, 1));
    }

    private static Set<Integer> ways(Case each, int sum, int level) {
        SumsReached sums = each.reached();
        Set<Integer> ways = new HashSet<>();
        SplittableRandom dice = new SplittableRandom(1);
        for (int i = 0; i < 200; i++) {
            ways.add(subset(sums.back(sum, level, each.cells().size(), dice)));
        }
        return ways;
    }

    /** Sums to 300 take five words of 64, on three levels, for the beginning and for each of two portions. */
    @Test
    void spent_countsTheWordsOfEveryStage() {
        SumsReached sums = new SumsReached();
        sums.begin(300, LEVELS);
        assertEquals(15, sums.spent());
        sums.add(0, 10);
        sums.add(1, 20);
        assertEquals(45, sums.spent());
        assertTrue(sums.last() == 2 && sums.levels() == LEVELS);
    }
}
