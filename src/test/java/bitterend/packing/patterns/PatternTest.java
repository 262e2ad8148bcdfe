package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** One way to draw from one reel: sorted, summed and priced. */
final class PatternTest {
    /** Runs of 20, 9 and 20 at a handling of 3, 4 and 5; 30 to open, 2 for each length left; pieces of 7 and 4. */
    private static Instance instance() {
        List<Run> runs = List.of(new Run(20, 3), new Run(9, 4), new Run(20, 5));
        ReelKind kind = new ReelKind(runs, 5, 30, 0, List.of(7L, 4L), left -> 2 * left);
        ReelKind other = new ReelKind(runs, 5, 31, 0, List.of(7L, 4L), left -> 2 * left);
        return new Normaliser(new PatternProblem(List.of(Item.must(5), Item.must(9)), List.of(kind, other))).instance();
    }

    private static Pattern of(int type, int[] run, int[] item, int[] count) {
        return Pattern.of(instance(), type, run, item, count, run.length);
    }

    @Test
    void takes_areSortedSummedAndPriced() {
        Pattern pattern = of(0, new int[] {2, 0, 2, 0, 0}, new int[] {1, 1, 0, 0, 1}, new int[] {2, 1, 1, 1, 1});
        assertArrayEquals(new int[] {0, 0, 2, 2}, pattern.run);
        assertArrayEquals(new int[] {0, 1, 0, 1}, pattern.takeItem);
        assertArrayEquals(new int[] {1, 2, 1, 2}, pattern.takeCount);
        assertArrayEquals(new int[] {0, 1}, pattern.item);
        assertArrayEquals(new int[] {2, 4}, pattern.count);
        assertEquals(30 + 2 * 15 + 4 + 2 * 15, pattern.cost);
        assertEquals(0, pattern.in(instance().free()).cost);
        assertEquals(30 + 3 + 4 + 8, of(0, new int[] {2}, new int[] {1}, new int[] {1}).cost);
    }

    @Test
    void takesOfNothing_areLeftOut_andOnlySoManyCount() {
        Pattern pattern = of(0, new int[] {0, 1}, new int[] {0, 1}, new int[] {0, 1});
        assertArrayEquals(new int[] {1}, pattern.run);
        assertEquals(30 + 3 + 8, pattern.cost);
        assertTrue(of(0, new int[] {0}, new int[] {0}, new int[] {0}).empty());
        assertEquals(0, of(0, new int[] {0}, new int[] {0}, new int[] {0}).cost);
        Pattern first = Pattern.of(instance(), 0, new int[] {0, 1}, new int[] {0, 1}, new int[] {1, 1}, 1);
        assertArrayEquals(new int[] {0}, first.takeItem);
        assertFalse(first.empty());
    }

    @Test
    void moreThanARunHolds_isRefused_andAFullRunIsNot() {
        Instance instance = new Normaliser(PatternProblem.oneLength(12, List.of(4L, 3L), List.of(9, 9))).instance();
        assertEquals(1, Pattern.of(instance, 0, new int[] {0}, new int[] {0}, new int[] {3}, 1).cost);
        assertThrows(
                IllegalArgumentException.class,
                () -> Pattern.of(instance, 0, new int[] {0, 0}, new int[] {0, 1}, new int[] {3, 1}, 2));
    }

    @Test
    void without_takesAPieceFromTheLastRunThatHoldsIt() {
        Pattern pattern = of(0, new int[] {0, 0, 2}, new int[] {0, 1, 1}, new int[] {1, 2, 1});
        Pattern less = pattern.without(instance(), 1);
        assertArrayEquals(new int[] {0, 0}, less.run);
        assertArrayEquals(new int[] {1, 2}, less.takeCount);
        assertEquals(30 + 2 * 15, less.cost);
        Pattern least = less.without(instance(), 1);
        assertArrayEquals(new int[] {1, 1}, least.takeCount);
        assertEquals(30 + 2 * 11, least.cost);
        assertThrows(IllegalArgumentException.class, () -> of(0, new int[] {0}, new int[] {0}, new int[] {1})
                .without(instance(), 1));
    }

    @Test
    void countsAndTimes_areThoseOfAllRuns() {
        Pattern pattern = of(0, new int[] {0, 0, 2}, new int[] {0, 1, 1}, new int[] {1, 2, 1});
        assertEquals(1, pattern.countOf(0));
        assertEquals(3, pattern.countOf(1));
        assertEquals(0, pattern.countOf(2));
        assertEquals(0, of(0, new int[] {0}, new int[] {1}, new int[] {1}).countOf(0));
        assertEquals(2, pattern.timesWithin(new int[] {5, 8}));
        assertEquals(1, pattern.timesWithin(new int[] {1, 8}));
        int[] left = {5, 9};
        pattern.takeFrom(left, 2);
        assertArrayEquals(new int[] {3, 3}, left);
    }

    @Test
    void patterns_areEqualWhereTheyCutTheSame() {
        int[] runs = {0, 2};
        int[] items = {0, 1};
        int[] counts = {1, 2};
        Pattern pattern = of(0, runs, items, counts);
        assertEquals(pattern, of(0, new int[] {2, 0}, new int[] {1, 0}, new int[] {2, 1}));
        assertEquals(
                pattern.hashCode(),
                of(0, new int[] {2, 0}, new int[] {1, 0}, new int[] {2, 1}).hashCode());
        assertNotEquals(pattern, of(1, runs, items, counts));
        assertNotEquals(pattern, of(0, new int[] {0, 1}, items, counts));
        assertNotEquals(pattern, of(0, runs, new int[] {1, 1}, counts));
        assertNotEquals(pattern, of(0, runs, items, new int[] {1, 1}));
        assertNotEquals(pattern, new Object());
    }

    @Test
    void hashes_ofDifferentPatternsHardlyEverMeet() {
        int patterns = 0;
        int hashes = 0;
        for (int seed = 0; seed < 20; seed++) {
            Instance instance = new Normaliser(TreeShops.all(new Random(seed), 6, 8)).instance();
            Set<Pattern> all = new HashSet<>(AllPatterns.of(instance));
            patterns += all.size();
            hashes += (int) all.stream().mapToInt(Pattern::hashCode).distinct().count();
        }
        assertTrue(hashes > patterns * 2 / 3, hashes + " of " + patterns);
    }
}
