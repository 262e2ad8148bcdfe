package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import bitterend.packing.patterns.knapsack.RunSolution;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Ways to draw from reels of several runs, put together: just those patterns that bring enough. */
final class ReelEnumerationTest {
    private static final int SHOPS = 5 * Integer.getInteger("shops", 60);

    @Test
    void patterns_areAllThatBringEnough_eachOnce() {
        int reels = 0;
        int found = 0;
        for (int seed = 0; seed < SHOPS; seed++) {
            Random random = new Random(seed);
            Instance instance = new Normaliser(RandomShops.problem(random, 1)).instance();
            long scale = 1L + random.nextInt(3);
            long[] price = random.longs(instance.items, 1, 60).toArray();
            for (ReelType type : instance.types) {
                if (!type.single()) {
                    List<Pattern> all = AllPatterns.of(instance).stream()
                            .filter(pattern -> pattern.type == type.index)
                            .toList();
                    long most = all.stream()
                            .mapToLong(each -> net(each, price, scale))
                            .max()
                            .orElse(0);
                    long enough = most - random.nextInt(80);
                    List<Pattern> joined = joined(instance, type, price, scale, enough);
                    Set<Pattern> expected = all.stream()
                            .filter(each -> net(each, price, scale) >= enough)
                            .collect(Collectors.toSet());
                    assertEquals(expected, new HashSet<>(joined), "seed " + seed);
                    assertEquals(expected.size(), joined.size(), "seed " + seed);
                    reels++;
                    found += joined.size();
                }
            }
        }
        assertTrue(found > reels, found + " patterns of " + reels);
    }

    private static List<Pattern> joined(Instance instance, ReelType type, long[] price, long scale, long enough) {
        List<List<RunSolution>> ways = new ArrayList<>();
        long[] best = new long[type.runs.length];
        for (int r = 0; r < best.length; r++) {
            List<RunSolution> own = new ArrayList<>();
            extend(instance, type, r, new int[instance.items], 0, price, scale, own);
            own.sort(Comparator.comparingLong(way -> -way.reducedProfit()));
            ways.add(own);
            best[r] = own.isEmpty() ? Pricer.LOW : own.get(0).reducedProfit();
        }
        FoundPatterns found = new FoundPatterns(100_000, Budget.endless());
        ReelEnumeration reel = new ReelEnumeration(instance, type, scale, best, enough, found);
        reel.join(ways);
        assertTrue(found.all());
        return found.patterns();
    }

    private static void extend(
            Instance instance,
            ReelType type,
            int run,
            int[] counts,
            int item,
            long[] price,
            long scale,
            List<RunSolution> ways) {
        if (item < counts.length) {
            for (counts[item] = 0; counts[item] <= instance.demand[item]; counts[item]++) {
                extend(instance, type, run, counts, item + 1, price, scale, ways);
            }
            counts[item] = 0;
            return;
        }
        long load = 0;
        long worth = 0;
        for (int i = 0; i < counts.length; i++) {
            load += counts[i] == 0 ? 0 : counts[i] * Math.min(type.load[i], 1L << 40);
            worth += counts[i] * price[i];
        }
        if (load > 0 && load <= type.runs[run].cap) {
            ways.add(RunSolution.of(worth - scale * type.runs[run].drop(load), counts));
        }
    }

    private static long net(Pattern pattern, long[] price, long scale) {
        long worth = 0;
        for (int t = 0; t < pattern.item.length; t++) {
            worth += price[pattern.item[t]] * pattern.count[t];
        }
        return worth - scale * pattern.cost;
    }
}
