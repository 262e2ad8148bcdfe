package bitterend.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class PercentilesTest {
    @Test
    void percentiles_ofTwentyFigures_areTheNearestRanks() {
        List<Double> figures = new ArrayList<>();
        for (int i = 20; i >= 1; i--) {
            figures.add((double) i);
        }
        Percentiles percentiles = new Percentiles(figures);
        assertEquals(10, percentiles.median());
        assertEquals(19, percentiles.at(0.95));
        assertEquals(20, percentiles.at(0.951));
        assertEquals(20, percentiles.most());
        assertEquals(10.5, percentiles.mean());
    }

    @Test
    void percentile_isTheSmallestFigureThatAsManyDoNotExceed() {
        Random random = new Random(5);
        for (int size = 1; size <= 60; size++) {
            List<Double> figures =
                    random.doubles(size).map(f -> Math.rint(f * 20)).boxed().toList();
            for (int hundredths = 1; hundredths <= 100; hundredths++) {
                double found = new Percentiles(figures).at(hundredths / 100.0);
                assertTrue(100 * figures.stream().filter(f -> f <= found).count() >= (long) hundredths * size);
                assertTrue(100 * figures.stream().filter(f -> f < found).count() < (long) hundredths * size);
            }
        }
    }

    @Test
    void percentiles_ofNothing_areNotANumber() {
        Percentiles none = new Percentiles(List.of());
        assertTrue(Double.isNaN(none.median()));
        assertTrue(Double.isNaN(none.mean()));
    }

    @Test
    void share_outsideZeroToOne_isRefused() {
        Percentiles one = new Percentiles(List.of(1.0));
        assertThrows(IllegalArgumentException.class, () -> one.at(0));
        assertThrows(IllegalArgumentException.class, () -> one.at(1.01));
    }
}
