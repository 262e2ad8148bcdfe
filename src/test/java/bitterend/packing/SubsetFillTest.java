package bitterend.packing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** The fullest room among all subsets, as long as there are nodes. */
final class SubsetFillTest {
    private static final int ENOUGH = 10_000;

    @Property
    void withEnoughNodes_noSubsetFillsMore(
            @ForAll @Size(max = 9) List<@LongRange(min = 1, max = 30) Long> stated,
            @ForAll @LongRange(max = 120) long room) {
        long[] sizes = array(stated);
        long most = 0;
        for (int subset = 0; subset < 1 << sizes.length; subset++) {
            long sum = sum(sizes, subset);
            most = sum <= room ? Math.max(most, sum) : most;
        }
        assertEquals(most, sum(sizes, SubsetFill.of(sizes, room, ENOUGH)));
        assertEquals(most, sum(sizes, SubsetFill.straightOn(sizes, room, ENOUGH)));
    }

    @Property
    void withFewNodes_whatIsChosenFits(
            @ForAll @Size(max = 9) List<@LongRange(min = 1, max = 30) Long> stated,
            @ForAll @LongRange(max = 120) long room,
            @ForAll @IntRange(max = 5) int nodes) {
        long[] sizes = array(stated);
        assertTrue(sum(sizes, SubsetFill.of(sizes, room, nodes)) <= room);
        assertTrue(sum(sizes, SubsetFill.straightOn(sizes, room, nodes)) <= room);
    }

    @Test
    void nodesSpent_leaveTheFirstThatFit() {
        assertArrayEquals(new boolean[] {true, false, false}, SubsetFill.of(new long[] {6, 5, 5}, 10, 1));
    }

    private static long[] array(List<Long> sizes) {
        return sizes.stream().mapToLong(Long::longValue).toArray();
    }

    private static long sum(long[] sizes, boolean[] chosen) {
        long sum = 0;
        for (int i = 0; i < sizes.length; i++) {
            sum += chosen[i] ? sizes[i] : 0;
        }
        return sum;
    }

    private static long sum(long[] sizes, int subset) {
        long sum = 0;
        for (int i = 0; i < sizes.length; i++) {
            sum += (subset >> i & 1) == 1 ? sizes[i] : 0;
        }
        return sum;
    }
}
