package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.packing.Prices;
import bitterend.packing.strategy.StudyStrategy;
import bitterend.stock.StockValue;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class LearningTest {
    /**
     * Every week asks for one piece of 40 and reels of 100 hold two. A coil shorter than 40 is of no use; the old curve
     * gave it half its price. A coil of 40 and more saves rope.
     */
    @Test
    void coilThatHoldsNothing_isWorthNothing() {
        StockValue half = length -> new UnitPrice(500).of(length);
        List<List<Length>> weeks = IntStream.range(0, 30)
                .mapToObj(week -> List.of(Length.ofMetres(40)))
                .toList();
        Study study = Study.of(
                Stall.rope(),
                half,
                Prices.NONE,
                List.of(Stall.offer("100", 100, 100)),
                weeks,
                new Study.Size(1, 12, 9));
        Learning.Lesson lesson = new Learning(study, study.options().get(0), new StudyStrategy(), 2, () -> false)
                .learn()
                .orElseThrow();
        assertEquals(6, lesson.scenarios());
        List<LearnedValue.Knot> knots = lesson.value().knots();
        for (int i = 1; i < knots.size(); i++) {
            assertTrue(knots.get(i).share().compareTo(knots.get(i - 1).share()) >= 0, knots.toString());
        }
        Cost ofUse = lesson.value().of(Length.ofMetres(60));
        assertTrue(ofUse.compareTo(half.of(Length.ofMetres(60))) > 0, "60 m save a 40: " + ofUse);
    }

    @Test
    void rising_poolsNeighboursThatFall() {
        assertArrayEquals(new long[] {1, 3, 3, 3, 9}, IsotonicRegression.of(new long[] {1, 5, 3, 1, 9}));
        assertArrayEquals(new long[] {2, 2, 2}, IsotonicRegression.of(new long[] {3, 2, 1}));
        assertArrayEquals(new long[] {}, IsotonicRegression.of(new long[] {}));
    }

    /** Cutting a length up never creates value: V(a) + V(b) is at most V(a + b). */
    @Test
    void learnedCurve_neverPaysForCuttingUp() {
        LearnedValue value = new LearnedValue(
                new UnitPrice(1_370),
                List.of(
                        new LearnedValue.Knot(new Length(3_000), new Ratio(1, 10)),
                        new LearnedValue.Knot(new Length(12_500), new Ratio(7, 10)),
                        new LearnedValue.Knot(new Length(80_000), new Ratio(95, 100))));
        assertEquals(0, value.of(new Length(2_999)).millis());
        assertEquals(411, value.of(new Length(3_000)).millis(), "3 m at 1370 a metre, a tenth of it");
        Random dice = new Random(8);
        for (int i = 0; i < 5_000; i++) {
            Length a = new Length(dice.nextInt(90_000));
            Length b = new Length(dice.nextInt(90_000));
            Cost apart = value.of(a).plus(value.of(b));
            assertTrue(apart.compareTo(value.of(a.plus(b))) <= 0, a + " and " + b);
        }
    }

    @Test
    void reorder_isDueWhenNineScenariosInTenWantMore() {
        List<List<Length>> weeks = IntStream.range(0, 10)
                .mapToObj(week -> List.of(Length.ofMetres(week < 2 ? 100 : 10)))
                .toList();
        Reorder plenty = Reorder.of(Stall.rope(), weeks, List.of(Stall.reel("R", 150)), List.of(), 1, 3);
        assertEquals(Length.ofMetres(100), plenty.wanted(), "two weeks in ten want 100");
        assertEquals(false, plenty.isDue());
        assertEquals(
                true,
                Reorder.of(Stall.rope(), weeks, List.of(Stall.reel("R", 90)), List.of(), 1, 3)
                        .isDue());
        OnOrder coming = new OnOrder("P", Stall.ROPE, Length.ofMetres(20), 1, Stall.DAY, "");
        assertEquals(
                false,
                Reorder.of(Stall.rope(), weeks, List.of(Stall.reel("R", 90)), List.of(coming), 1, 3)
                        .isDue());
    }
}
