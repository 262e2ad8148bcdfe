package bitterend.buying;

import bitterend.measure.Cost;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The choices of one set for each part that are worth their money: none pays no more and costs less. A multiple-choice knapsack,
 * solved exactly by adding part after part and dropping what another sum beats (Kellerer, Pferschy, Pisinger, Knapsack Problems,
 * 2004, chapter 11). What suppliers charge by order is left out.
 */
final class MoneyFront {
    /** No limit to the money. */
    static final Cost ANY = new Cost(Long.MAX_VALUE);

    /** More sums than this are thinned out evenly: then the best is found but for the money between two of them. */
    private static final int MOST_SUMS = 20_000;

    /** So many of the best sums are worth looking at with what suppliers charge by order. */
    private static final int MOST_TOLD = 500;

    private final List<List<Purchase>> parts;

    /** @param parts the sets of each part to choose one from */
    MoneyFront(List<List<Purchase>> parts) {
        this.parts = parts;
    }

    private record Sum(long paid, long cost, @Nullable Sum before, Purchase last) {
        static Sum of(@Nullable Sum before, Purchase last) {
            return new Sum(
                    (before == null ? 0 : before.paid) + last.paid().millis(),
                    (before == null ? 0 : before.cost) + last.cost().millis(),
                    before,
                    last);
        }

        List<Purchase> all() {
            List<Purchase> all = new ArrayList<>();
            for (Sum each = this; each != null; each = each.before) {
                all.add(each.last);
            }
            Collections.reverse(all);
            return all;
        }
    }

    /** The choices that pay no more than this, the least cost first. */
    List<List<Purchase>> within(Cost most) {
        List<Sum> sums = List.of();
        for (int part = 0; part < parts.size(); part++) {
            List<Sum> more = new ArrayList<>();
            for (Purchase each : parts.get(part)) {
                if (part == 0) {
                    more.add(Sum.of(null, each));
                }
                sums.forEach(before -> more.add(Sum.of(before, each)));
            }
            more.removeIf(sum -> sum.paid > most.millis());
            sums = thinned(front(more));
        }
        List<List<Purchase>> told = new ArrayList<>();
        for (int i = sums.size() - 1; i >= 0 && told.size() < MOST_TOLD; i--) {
            told.add(sums.get(i).all());
        }
        return told;
    }

    /** What no other sum beats, by the money paid. */
    private static List<Sum> front(List<Sum> sums) {
        sums.sort(Comparator.comparingLong(Sum::paid).thenComparingLong(Sum::cost));
        List<Sum> front = new ArrayList<>();
        for (Sum sum : sums) {
            if (front.isEmpty() || sum.cost < front.get(front.size() - 1).cost) {
                front.add(sum);
            }
        }
        return front;
    }

    private static List<Sum> thinned(List<Sum> front) {
        if (front.size() <= MOST_SUMS) {
            return front;
        }
        List<Sum> some = new ArrayList<>();
        for (int i = 0; i < MOST_SUMS; i++) {
            some.add(front.get((int) ((long) i * (front.size() - 1) / (MOST_SUMS - 1))));
        }
        return some;
    }
}
