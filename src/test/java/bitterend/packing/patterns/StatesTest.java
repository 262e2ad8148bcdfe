package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Every number of pieces of each item as one index, and the whole number below what a branch uses. */
final class StatesTest {
    @Test
    void states_areAllNumbersOfPieces_andTheirIndicesAddUp() {
        for (int seed = 0; seed < 40; seed++) {
            int[] demand = new Random(seed).ints(1 + seed % 4, 0, 4).toArray();
            States states = States.of(demand);
            Set<String> seen = new HashSet<>();
            for (int a = 0; a < states.size(); a++) {
                StringBuilder digits = new StringBuilder();
                for (int i = 0; i < demand.length; i++) {
                    digits.append(states.count(a, i)).append(' ');
                }
                seen.add(digits.toString());
                for (int b = 0; b < states.size(); b++) {
                    sum(demand, states, a, b);
                }
            }
            assertEquals(states.size(), seen.size(), "seed " + seed);
        }
    }

    private static void sum(int[] demand, States states, int a, int b) {
        boolean addable = true;
        for (int i = 0; i < demand.length; i++) {
            addable &= states.count(a, i) + states.count(b, i) <= demand[i];
        }
        assertEquals(addable, states.addable(a, b), a + " and " + b);
        for (int i = 0; i < demand.length && addable; i++) {
            assertEquals(states.count(a, i) + states.count(b, i), states.count(a + b, i));
        }
    }

    @Test
    void number_ofStates_isCountedUpToSoMany() {
        assertEquals(60, States.count(new int[] {2, 3, 4}, 60));
        assertEquals(60, States.count(new int[] {2, 3, 4}, 59));
        assertEquals(13, States.count(new int[] {2, 3, 4}, 12));
        assertEquals(1, States.count(new int[] {}, 5));
        assertEquals(1_001, States.count(new int[] {Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE}, 1_000));
        assertThrows(ArithmeticException.class, () -> States.of(new int[] {1 << 16, 1 << 16}));
    }

    @Test
    void load_isThatOfAllPieces_andNoneWhereOneMayNotBeCut() {
        States states = States.of(new int[] {2, 3});
        int both = 2 + 3 * 2;
        assertEquals(2 * 7 + 2 * 5, states.load(both, new long[] {7, 5}));
        assertEquals(0, states.load(0, new long[] {7, 5}));
        assertEquals(ReelType.NEVER, states.load(both, new long[] {7, ReelType.NEVER}));
        assertEquals(14, states.load(2, new long[] {7, ReelType.NEVER}));
        assertArrayEquals(new int[] {0, 1}, states.left(both));
        assertArrayEquals(new int[] {2, 3}, states.left(0));
    }

    @Test
    void branch_restsOnTheWholeNumberBelow() {
        int[] columns = {3, 5};
        assertEquals(2, new Branch(columns, 2.5).floor());
        assertEquals(0, new Branch(columns, 0.001).floor());
        assertEquals(3, new Branch(columns, 2.9999999).floor());
        assertEquals(3, new Branch(columns, 3.0000001).floor());
        assertEquals(2, new Branch(columns, 2.9999).floor());
        assertArrayEquals(columns, new Branch(columns, 1).columns());
    }
}
