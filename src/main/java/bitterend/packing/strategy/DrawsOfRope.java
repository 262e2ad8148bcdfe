package bitterend.packing.strategy;

import bitterend.measure.Length;
import bitterend.packing.DrawPrice;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunLoad;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;

/**
 * The most that draws could earn if rope were sold by the millimetre: whatever load, as if pieces of every length were
 * wanted. For each run only the loads that some price makes the best are kept.
 */
final class DrawsOfRope {
    /** Parts of 1/1000 minor unit in which a millimetre is priced. */
    static final long FINE = 1_000;

    private static final int MOST_POINTS = 2_000;

    private final List<Offer> offers = new ArrayList<>();

    /** Reels that are alike, and how many. */
    private record Offer(String rope, long fixed, long handling, List<Hull> runs, long reels) {}

    private record RunKind(String rope, long mm, StockValue value) {}

    /** Loads in mm, rising, and the value that leaves the rack with them. */
    private static final class Hull {
        private final long[] loads;
        private final long[] drops;

        Hull(List<long[]> points) {
            loads = points.stream().mapToLong(point -> point[0]).toArray();
            drops = points.stream().mapToLong(point -> point[1]).toArray();
        }

        /** The most that is earned at a price; none cut is no load of these. */
        long earn(long price) {
            long most = Long.MIN_VALUE;
            for (int i = 0; i < loads.length; i++) {
                most = Math.max(most, Math.multiplyExact(price, loads[i]) / FINE + 1 - drops[i]);
            }
            return most;
        }
    }

    /** @param shortest the shortest load that a piece puts on a rope, by its id */
    DrawsOfRope(PackingProblem problem, ToLongFunction<String> shortest) {
        Map<RunKind, Hull> hulls = new HashMap<>();
        Map<Offer, Long> reels = new HashMap<>();
        Map<String, Long> least = new HashMap<>();
        for (Reel reel : problem.reels()) {
            DrawPrice draw = new DrawPrice(problem, reel);
            long from = least.computeIfAbsent(reel.rope(), shortest::applyAsLong);
            List<Hull> runs = new ArrayList<>();
            for (int run = 0; run < draw.runs().size(); run++) {
                int place = run;
                long mm = draw.runs().get(run).length().mm();
                long most = mm + draw.loss().mm();
                if (most >= from) {
                    runs.add(hulls.computeIfAbsent(
                            new RunKind(reel.rope(), mm, problem.valueOn(reel)), any -> hull(draw, place, from, most)));
                }
            }
            long handling = problem.prices().handling().millis();
            long fixed = DrawPrice.fixedCost(problem, reel).millis();
            reels.merge(new Offer(reel.rope(), fixed, handling, runs, 1), 1L, Long::sum);
        }
        reels.forEach((offer, count) ->
                offers.add(new Offer(offer.rope(), offer.fixed(), offer.handling(), offer.runs(), count)));
    }

    /**
     * Loads from the shortest to the whole run. On long runs only some are looked at; each stands for those up to the next
     * at the value that leaves with itself, so that nothing is earned too little.
     */
    private static Hull hull(DrawPrice draw, int run, long from, long most) {
        long step = Math.max(1, (most - from) / MOST_POINTS);
        List<long[]> hull = new ArrayList<>();
        for (long at = from; at <= most; at += step) {
            long upTo = Math.min(most, at + step - 1);
            long drop = draw.drop(run, new RunLoad(new Length(at - draw.loss().mm()), 1))
                    .millis();
            long[] point = {upTo, drop};
            while (hull.size() > 1 && isAbove(hull.get(hull.size() - 2), hull.get(hull.size() - 1), point)) {
                hull.remove(hull.size() - 1);
            }
            hull.add(point);
        }
        return new Hull(hull);
    }

    /** Whether the middle of three points lies on or above the line between the others. */
    private static boolean isAbove(long[] first, long[] middle, long[] last) {
        return Math.multiplyExact(middle[1] - first[1], last[0] - first[0])
                >= Math.multiplyExact(last[1] - first[1], middle[0] - first[0]);
    }

    /** What all reels together earn at most, by the price of a millimetre of each rope. */
    long earn(Map<String, Long> prices) {
        long sum = 0;
        for (Offer offer : offers) {
            long price = prices.getOrDefault(offer.rope(), 0L);
            sum = Math.addExact(sum, Math.multiplyExact(offer.reels(), earn(offer, price)));
        }
        return sum;
    }

    /** The best over the last run that is cut; those before it are cut too, or cut off whole. */
    private static long earn(Offer offer, long price) {
        long best = 0;
        long before = -offer.fixed();
        for (Hull run : offer.runs()) {
            long here = run.earn(price);
            best = Math.max(best, before + here);
            before += Math.max(here, -offer.handling());
        }
        return best;
    }
}
