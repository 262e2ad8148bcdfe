package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Half the sum of one or three rows, rounded up: all that are violated, the most violated first. */
final class SubsetRowsTest {
    private static final int SHOPS = 5 * Integer.getInteger("shops", 60);
    private static final double LITTLE = 0.02;

    /** A small task with shares of its patterns, drawn by lot. */
    private static final class Case {
        private final Instance instance;
        private final List<Pattern> patterns;
        private final double[] x;

        Case(int seed) {
            Random random = new Random(seed);
            instance = new Normaliser(TreeShops.all(random, 3, 7)).instance();
            patterns = new ArrayList<>(AllPatterns.of(instance));
            patterns.add(Pattern.NOTHING);
            x = new double[patterns.size()];
            for (int j = 0; j < x.length; j++) {
                x[j] = random.nextInt(x.length) > 4 ? 0 : random.nextInt(6) / 4.0;
            }
        }

        double value(ValidInequality cut) {
            double sum = 0;
            for (int t = 0; t < cut.columns().length; t++) {
                sum += cut.coefficients()[t] * x[cut.columns()[t]];
            }
            return sum;
        }

        Set<String> expected() {
            Set<String> all = new TreeSet<>();
            for (int a = 0; a < instance.items; a++) {
                expect(all, a);
                for (int b = a + 1; b < instance.items; b++) {
                    for (int c = b + 1; c < instance.items; c++) {
                        int pairs = near(a, b) + near(a, c) + near(b, c);
                        if (pairs >= 2) {
                            expect(all, a, b, c);
                        }
                    }
                }
            }
            return all;
        }

        /** Whether a pattern that is used in part holds both. */
        private int near(int a, int b) {
            boolean near = false;
            for (int j = 0; j < x.length; j++) {
                boolean both = patterns.get(j).countOf(a) > 0 && patterns.get(j).countOf(b) > 0;
                near |= x[j] != Math.rint(x[j]) && both;
            }
            return near ? 1 : 0;
        }

        private void expect(Set<String> all, int... items) {
            int demand = 0;
            for (int item : items) {
                demand += instance.demand[item];
            }
            Map<Integer, Integer> map = new TreeMap<>();
            double sum = 0;
            for (int j = 0; j < x.length; j++) {
                int pieces = 0;
                for (int item : items) {
                    pieces += patterns.get(j).countOf(item);
                }
                if (pieces > 0) {
                    int half = (pieces + 1) / 2;
                    map.put(j, half);
                    sum += half * x[j];
                }
            }
            int whole = (demand + 1) / 2;
            double rhs = whole;
            if (demand % 2 == 1 && rhs - sum > LITTLE) {
                all.add(rhs + ": " + map);
            }
        }
    }

    @Test
    void cuts_areAllThatAreViolated_theMostViolatedFirst() {
        int found = 0;
        for (int seed = 0; seed < SHOPS; seed++) {
            Case one = new Case(seed);
            if (one.instance.items > 4) {
                continue;
            }
            List<ValidInequality> cuts = new SubsetRows(one.instance, one.patterns, one.x).violated();
            Set<String> named = new TreeSet<>();
            double last = Double.MAX_VALUE;
            for (ValidInequality cut : cuts) {
                double violation = cut.rhs() - one.value(cut);
                assertTrue(violation > LITTLE && violation <= last + 1e-9, "seed " + seed);
                last = violation;
                named.add(cut.rhs() + ": " + coefficients(cut));
            }
            assertEquals(one.expected(), named, "seed " + seed);
            found += cuts.size();
        }
        assertTrue(found > SHOPS / 2, "found " + found);
    }

    private static Map<Integer, Integer> coefficients(ValidInequality cut) {
        Map<Integer, Integer> map = new TreeMap<>();
        for (int t = 0; t < cut.columns().length; t++) {
            map.put(cut.columns()[t], (int) cut.coefficients()[t]);
        }
        return map;
    }

    @Test
    void threePiecesOfWhichEachReelHoldsTwo_needTwoReels() {
        Instance three = new Normaliser(PatternProblem.oneLength(10, List.of(5L, 4L, 3L), List.of(1, 1, 1))).instance();
        List<Pattern> pairs = new ArrayList<>();
        for (int left = 0; left < 3; left++) {
            int[] items = {left == 0 ? 1 : 0, left == 2 ? 1 : 2};
            pairs.add(Pattern.of(three, 0, new int[2], items, new int[] {1, 1}, 2));
        }
        List<ValidInequality> cuts = new SubsetRows(three, pairs, new double[] {0.5, 0.5, 0.5}).violated();
        assertEquals(1, cuts.size());
        assertEquals(2, cuts.get(0).rhs());
        assertEquals(Map.of(0, 1, 1, 1, 2, 1), coefficients(cuts.get(0)));
        assertEquals(List.of(), new SubsetRows(three, pairs, new double[] {1, 0.5, 0.5}).violated());
    }
}
