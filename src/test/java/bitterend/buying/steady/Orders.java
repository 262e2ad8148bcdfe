package bitterend.buying.steady;

import bitterend.measure.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;

/** Pasts drawn from a process that is known. */
final class Orders {
    static final LocalDate MONDAY = LocalDate.of(2024, 1, 1);

    private Orders() {}

    /** In each week so many orders on the average, of one to three pieces of 2 to 20 m. */
    static PastWeeks past(long seed, int weeks, IntToDoubleFunction mean) {
        SplittableRandom dice = new SplittableRandom(seed).split();
        List<List<List<Length>>> all = new ArrayList<>();
        for (int week = 0; week < weeks; week++) {
            List<List<Length>> orders = new ArrayList<>();
            for (int order = count(dice, mean.applyAsDouble(week)); order > 0; order--) {
                List<Length> pieces = new ArrayList<>();
                Length length = new Length(2_000 + 10L * dice.nextInt(1_801));
                for (int piece = dice.nextInt(3); piece >= 0; piece--) {
                    pieces.add(length);
                }
                orders.add(pieces);
            }
            all.add(orders);
        }
        return new PastWeeks(MONDAY, all);
    }

    /** A year with a summer: from a tenth to nearly twice of the mean. */
    static IntToDoubleFunction seasonal(double mean) {
        return week -> mean * (1 - 0.9 * Math.cos(2 * Math.PI * week / 52));
    }

    /** Each week the same pieces in one order. */
    static PastWeeks level(int weeks, int... metres) {
        List<Length> order = new ArrayList<>();
        for (int each : metres) {
            order.add(Length.ofMetres(each));
        }
        List<List<List<Length>>> all = new ArrayList<>();
        for (int week = 0; week < weeks; week++) {
            all.add(List.of(order));
        }
        return new PastWeeks(MONDAY, all);
    }

    private static int count(SplittableRandom dice, double mean) {
        int count = -1;
        for (double product = 1; product > Math.exp(-mean); count++) {
            product *= dice.nextDouble();
        }
        return Math.max(0, count);
    }
}
