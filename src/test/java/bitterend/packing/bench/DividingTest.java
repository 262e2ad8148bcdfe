package bitterend.packing.bench;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Prices;
import bitterend.packing.Sketch;
import bitterend.packing.check.PlanChecker;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.order.CuttingOrder;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

final class DividingTest {
    private static final int MOST_PORTIONS = 7;

    @Test
    void packing_isSoundAndNoDearerAndPlansTheSame() {
        int cheaper = 0;
        for (long seed = 0; seed < 40; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.DAY);
            PlanPrice prices = new PlanPrice(shop);
            Packing start = new GreedyPacker(shop).best();
            Workbench bench = new Workbench(shop);
            Packing divided = Dividing.improve(bench, start, divisions(200, seed));
            Packing filled = LeastUndone.filled(bench, divided);
            assertEquals(List.of(), PlanChecker.check(shop, new CuttingOrder(shop).plan(filled)), "seed " + seed);
            assertEquals(start.places().keySet(), divided.places().keySet(), "seed " + seed);
            int order = prices.of(divided).compareTo(prices.of(start));
            assertTrue(order <= 0, "seed " + seed);
            cheaper += order < 0 ? 1 : 0;
        }
        assertTrue(cheaper > 8, "shops whose greedy plan could be divided better: " + cheaper);
    }

    @Test
    void sameSeedAndWork_giveTheSamePacking() {
        PackingProblem shop = RandomShop.of(7, ShopSize.DAY);
        Packing start = new GreedyPacker(shop).firstFit();
        Packing once = Dividing.improve(new Workbench(shop), start, divisions(500, 3));
        assertEquals(once, Dividing.improve(new Workbench(shop), start, divisions(500, 3)));
    }

    @Test
    void cancelled_keepsTheStart() {
        PackingProblem shop = RandomShop.of(7, ShopSize.DAY);
        Packing start = new GreedyPacker(shop).firstFit();
        Effort none = new Effort(Duration.ofDays(1), 500, 3, 1, () -> true, progress -> {});
        assertEquals(start, Dividing.improve(new Workbench(shop), start, none));
    }

    /** Against every way to divide with one lot more at most, each priced as a whole plan, in turn strictly and leniently. */
    @Test
    void twoRuns_areDividedInOneOfTheCheapestWays() {
        int better = 0;
        int split = 0;
        for (long seed = 0; seed < 40; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.DAY);
            Workbench bench = new Workbench(shop);
            CellRack rack = new CellRack(bench, RunDrops.of(bench).orElseThrow(), new GreedyPacker(shop).firstFit());
            SplittableRandom random = new SplittableRandom(seed);
            TwoRuns two = new TwoRuns(rack, random);
            for (int turn = 0; turn < 20; turn++) {
                int one = Math.max(0, rack.runOf[random.nextInt(bench.pieces)]);
                int other = random.nextInt(bench.runs);
                List<Portion> portions = one == other ? List.of() : new Portions(rack).of(one, other);
                if (portions.isEmpty() || portions.size() > MOST_PORTIONS) {
                    continue;
                }
                long lenience = turn % 2 == 0 ? 0 : 50_000;
                long before = price(rack);
                long best = cheapest(rack, portions, one, other);
                long change = two.divide(one, other, lenience);
                String name = "seed " + seed + ", turn " + turn;
                assertEquals(price(rack), before + change, name);
                assertTrue(price(rack) <= best + lenience, name);
                assertTrue(price(rack) >= best, name);
                better += best < before ? 1 : 0;
                split += rack.lots.splits() > 0 ? 1 : 0;
            }
        }
        assertTrue(better > 5, "pairs that could be divided better: " + better);
        assertTrue(split > 5, "pairs beside split orders: " + split);
    }

    private static long price(CellRack rack) {
        return rack.bench.prices().of(RackState.packing(rack.bench, rack.runOf)).millis();
    }

    private static long cheapest(CellRack rack, List<Portion> portions, int one, int other) {
        int[] was = rack.runOf.clone();
        long splits = rack.lots.splits();
        long best = Long.MAX_VALUE;
        for (int way = 0; way < 1 << portions.size(); way++) {
            for (int i = 0; i < portions.size(); i++) {
                put(rack, portions.get(i), (way >> i & 1) == 0 ? one : other);
            }
            boolean fits = rack.load[one] <= rack.prices.room[one] && rack.load[other] <= rack.prices.room[other];
            fits &= rack.lots.splits() <= splits + TwoRuns.MORE_LOTS;
            best = fits ? Math.min(best, price(rack)) : best;
        }
        portions.forEach(portion -> put(rack, portion, was[portion.pieces()[0]]));
        return best;
    }

    private static void put(CellRack rack, Portion portion, int run) {
        for (int piece : portion.pieces()) {
            rack.remove(piece);
            rack.place(piece, run);
        }
    }

    /** No two pieces are equal, and no run can change its contents with the other as a whole. */
    @Test
    void orders_areBroughtTogether() {
        Sketch sketch = new Sketch()
                .prices(new Prices(Cost.ZERO, Cost.ZERO, Cost.ZERO, new Cost(1_000), Cost.ZERO, Cost.ZERO))
                .with(reel("K1", 6_300).lot("L1"))
                .with(reel("K2", 7_700).lot("L2"))
                .with(piece("A/1.1", 2_000).order("A"), "K1", 1)
                .with(piece("A/2.1", 4_100).order("A"), "K2", 1)
                .with(piece("B/1.1", 4_200).order("B"), "K1", 1)
                .with(piece("B/2.1", 3_300).order("B"), "K2", 1);
        PlanPrice prices = new PlanPrice(sketch.problem());
        assertEquals(new Cost(2_000), prices.acrossReels(sketch.packing()));
        Packing divided = Dividing.improve(new Workbench(sketch.problem()), sketch.packing(), divisions(100, 0));
        assertEquals(Cost.ZERO, prices.acrossReels(divided));
    }

    private static Effort divisions(long work, long seed) {
        return new Effort(Duration.ofDays(1), work, seed, 1, () -> false, progress -> {});
    }
}
