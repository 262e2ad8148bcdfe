package bitterend.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.math3.fraction.BigFraction;
import org.junit.jupiter.api.Test;

final class CoinsTest {
    /** 7.5075 and 2.5025: the coin that is left over goes to the larger remainder. */
    @Test
    void coinThatIsLeftOver_goesToTheLargestRemainder() {
        assertEquals(
                List.of(new Money(751), new Money(250)), Coins.byParts(new Money(1_001), List.of(30_000L, 10_000L)));
        assertEquals(
                List.of(new Money(1), new Money(1), new Money(0)), Coins.byParts(new Money(2), List.of(1L, 1L, 1L)));
        assertEquals(List.of(2L, -1L), Coins.whole(1, List.of(new BigFraction(3, 2), new BigFraction(-1, 2))));
    }

    @Test
    void halves_goAwayFromNothing() {
        assertEquals(3, Coins.nearest(new BigFraction(5, 2)));
        assertEquals(2, Coins.nearest(new BigFraction(7, 3)));
        assertEquals(-3, Coins.nearest(new BigFraction(-5, 2)));
    }
}
