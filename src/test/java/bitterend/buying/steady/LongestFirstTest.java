package bitterend.buying.steady;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import org.junit.jupiter.api.Test;

/** What waits comes before what is ordered, and each begins with its longest piece. */
final class LongestFirstTest {
    @Test
    void waiting_comesFirst_eachFromTheLongest() {
        assertArrayEquals(
                new int[] {7, 5, 3, 9, 8, 2, 1},
                LongestFirst.of(new int[] {3, 7, 5, 100, 100}, 3, new int[] {1, 9, 2, 8}));
        assertArrayEquals(new int[] {4}, LongestFirst.of(new int[] {9}, 0, new int[] {4}));
        assertArrayEquals(new int[] {6, 5}, LongestFirst.of(new int[] {5, 6}, 2, new int[0]));
    }
}
