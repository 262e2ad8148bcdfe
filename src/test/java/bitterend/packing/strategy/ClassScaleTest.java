package bitterend.packing.strategy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.Undone;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class ClassScaleTest {
    @Test
    void numbers_compareAsTheWorkDoes() {
        Random random = new Random(3);
        Undone all = Undone.of(List.of(90L, 0L, 120L, 300L, 700L));
        ClassScale scale = ClassScale.of(all);
        assertTrue(scale.isExact());
        for (int i = 0; i < 10_000; i++) {
            Undone one = some(random, all);
            Undone other = some(random, all);
            assertEquals(
                    Integer.signum(one.compareTo(other)),
                    Long.signum(scale.numberOf(one) - scale.numberOf(other)),
                    one + " " + other);
        }
    }

    @Test
    void tooMuchWork_keepsTheFirstClassesApart() {
        ClassScale scale = ClassScale.of(Undone.of(List.of(50_000L, 50_000L, 50_000L, 50_000L, 50_000L)));
        assertFalse(scale.isExact());
        assertTrue(scale.numberOf(Undone.of(1, 1)) > scale.numberOf(Undone.of(List.of(0L, 50_000L, 9L, 9L, 9L))));
        assertEquals(scale.numberOf(Undone.of(4, 7)), scale.numberOf(Undone.of(5, 7)));
    }

    @Test
    void prices_areThoseOfTheNumber() {
        ClassScale scale = ClassScale.of(Undone.of(List.of(9L, 9L, 9L, 9L, 9L)));
        Undone some = Undone.of(List.of(1L, 0L, 3L, 2L, 5L));
        List<Long> prices = scale.prices(7);
        long charge = 0;
        for (int k = 1; k <= Undone.CLASSES; k++) {
            charge += prices.get(k - 1) * some.in(k);
        }
        assertEquals(7 * scale.numberOf(some), charge);
    }

    private static Undone some(Random random, Undone all) {
        return Undone.of(all.weights().stream()
                .map(most -> (long) random.nextInt(most.intValue() + 1))
                .toList());
    }
}
