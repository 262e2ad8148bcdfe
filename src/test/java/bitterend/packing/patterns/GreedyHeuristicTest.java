package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import bitterend.packing.patterns.GreedyHeuristic.Manner;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Reels filled one after another: soundly, to the end, and each as it is promised. */
final class GreedyHeuristicTest {
    private static final int SHOPS = 3 * Integer.getInteger("shops", 60);

    private static PartialPlan complete(Instance instance, Manner manner, int noise, Budget budget) {
        PartialPlan plan = new PartialPlan(instance);
        long[] worth = InitialPlans.lengths(instance);
        new GreedyHeuristic(instance, new Random(1)).complete(plan, worth, manner, noise, budget);
        return plan;
    }

    private static Instance oneLength(long cap, List<Long> lengths, List<Integer> demands) {
        return new Normaliser(PatternProblem.oneLength(cap, lengths, demands)).instance();
    }

    private static List<List<Long>> lengths(Instance instance, PartialPlan plan) {
        return plan.reels.stream()
                .map(reel -> {
                    long[] pieces = new long[Arrays.stream(reel.count).sum()];
                    int at = 0;
                    for (int t = 0; t < reel.item.length; t++) {
                        Arrays.fill(pieces, at, at + reel.count[t], instance.types[reel.type].load[reel.item[t]]);
                        at += reel.count[t];
                    }
                    return Arrays.stream(pieces).boxed().toList();
                })
                .toList();
    }

    @Test
    void plan_isSound_andNothingMoreFits() {
        for (int seed = 0; seed < SHOPS; seed++) {
            PatternProblem problem = RandomShops.problem(new Random(seed), 1);
            Instance instance = new Normaliser(problem).instance();
            for (Manner manner : Manner.values()) {
                for (int noise : new int[] {0, 200}) {
                    PartialPlan plan = complete(instance, manner, noise, Budget.endless());
                    sound(instance, plan, "seed " + seed);
                    full(instance, plan, "seed " + seed + " " + manner);
                }
            }
        }
    }

    private static void sound(Instance instance, PartialPlan plan, String where) {
        int[] left = instance.demand.clone();
        int[] supply = NodeBoundTest.supplies(instance);
        long cost = 0;
        for (Pattern reel : plan.reels) {
            reel.takeFrom(left, 1);
            supply[reel.type]--;
            cost += reel.cost;
        }
        assertTrue(Arrays.stream(left).allMatch(each -> each >= 0), where);
        assertTrue(Arrays.stream(supply).allMatch(each -> each >= 0), where);
        assertEquals(Arrays.toString(left), Arrays.toString(plan.residual), where);
        assertEquals(Arrays.toString(supply), Arrays.toString(plan.supply), where);
        assertEquals(cost, plan.cost, where);
    }

    private static void full(Instance instance, PartialPlan plan, String where) {
        for (ReelType type : instance.types) {
            for (int i = 0; i < instance.items && plan.supply[type.index] > 0; i++) {
                assertTrue(plan.residual[i] == 0 || type.load[i] > type.longestCap(), where);
            }
        }
    }

    @Test
    void longestFirst_takesTheLongestThatStillFits() {
        Instance instance = oneLength(11, List.of(6L, 5L, 4L, 3L), List.of(1, 2, 2, 2));
        assertEquals(
                List.of(List.of(6L, 5L), List.of(5L, 4L), List.of(4L, 3L, 3L)),
                lengths(instance, complete(instance, Manner.LONGEST_FIRST, 0, Budget.endless())));
    }

    @Test
    void leastSlack_fillsAReelAsFullAsItsLongestPieceLets() {
        Instance instance = oneLength(11, List.of(5L, 4L, 3L), List.of(1, 2, 2));
        assertEquals(
                List.of(List.of(5L, 3L, 3L), List.of(4L, 4L)),
                lengths(instance, complete(instance, Manner.LEAST_SLACK, 0, Budget.endless())));
        for (int seed = 0; seed < SHOPS; seed++) {
            Random random = new Random(seed);
            int cap = 15 + random.nextInt(25);
            List<Long> lengths =
                    random.longs(1 + random.nextInt(5), 2, cap).boxed().toList();
            List<Integer> demands =
                    lengths.stream().map(length -> 1 + random.nextInt(3)).toList();
            Instance drawn = oneLength(cap, lengths, demands);
            int longest = 0;
            for (int i = 0; i < drawn.items; i++) {
                longest = drawn.types[0].load[i] > drawn.types[0].load[longest] ? i : longest;
            }
            int item = longest;
            long most = AllPatterns.of(drawn).stream()
                    .filter(pattern -> pattern.countOf(item) > 0)
                    .mapToLong(pattern -> loadOf(drawn, pattern))
                    .max()
                    .orElseThrow();
            Pattern first = complete(drawn, Manner.LEAST_SLACK, 0, Budget.endless())
                    .reels
                    .get(0);
            assertTrue(first.countOf(item) > 0, "seed " + seed);
            assertEquals(most, loadOf(drawn, first), "seed " + seed);
        }
    }

    private static long loadOf(Instance instance, Pattern pattern) {
        long sum = 0;
        for (int t = 0; t < pattern.item.length; t++) {
            sum += instance.types[pattern.type].load[pattern.item[t]] * pattern.count[t];
        }
        return sum;
    }

    @Test
    void kind_isTheOneThatGivesMostForItsCost_theFirstOfTwoThatGiveTheSame() {
        ReelKind small = ReelKind.whole(10, 99, ReelKind.UNLIMITED, List.of(5L));
        ReelKind large = ReelKind.whole(20, 199, 1, List.of(5L));
        ReelKind cheap = ReelKind.whole(20, 150, 1, List.of(5L));
        assertEquals(List.of(0, 0, 0, 0), kinds(8, small, large));
        assertEquals(List.of(0, 1, 1), kinds(8, large, small));
        assertEquals(List.of(1, 0, 0), kinds(8, small, cheap));
        assertEquals(List.of(1, 0, 0), kinds(7, small, cheap));
    }

    private static List<Integer> kinds(int pieces, ReelKind... reels) {
        Instance instance = new Normaliser(new PatternProblem(List.of(Item.must(pieces)), List.of(reels))).instance();
        return complete(instance, Manner.LONGEST_FIRST, 0, Budget.endless()).reels.stream()
                .map(reel -> reel.type)
                .toList();
    }

    @Test
    void laterRuns_areFilledWithWhatTheEarlierLeave() {
        ReelKind reel = new ReelKind(List.of(Run.of(10), Run.of(10)), 1, 1, 0, List.of(7L, 3L), ReelKind.WORTHLESS);
        Instance instance =
                new Normaliser(new PatternProblem(List.of(Item.must(1), Item.must(4)), List.of(reel))).instance();
        for (Manner manner : Manner.values()) {
            PartialPlan plan = complete(instance, manner, 0, Budget.endless());
            assertEquals(1, plan.reels.size());
            assertEquals("[0, 0, 1]", Arrays.toString(plan.reels.get(0).run));
            assertEquals("[1, 1, 3]", Arrays.toString(plan.reels.get(0).takeCount));
            assertTrue(plan.done());
        }
    }

    @Test
    void aBudgetThatIsOver_cutsNothing_andSlackIsCharged() {
        Instance instance = oneLength(11, List.of(5L, 4L, 3L), List.of(1, 2, 2));
        Budget nothing = Budget.endless().part(0);
        nothing.spend(1 << 20);
        assertEquals(0, complete(instance, Manner.LEAST_SLACK, 0, nothing).reels.size());
        Budget some = Budget.endless().part(1_000);
        complete(instance, Manner.LEAST_SLACK, 0, some);
        assertTrue(some.spent() > 0);
    }
}
