package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Problems with answers in print; the source stands beside each. */
final class PublishedValuesTest {
    private static final Effort EFFORT = Effort.ofWork(300_000_000);

    @Test
    void chvatal_needs453() {
        // V. Chvatal, Linear Programming, Freeman 1983, chapter 13.
        assertReels(453, 100, "45x97 36x610 31x395 14x211");
    }

    @Test
    void ampl_needs47() {
        // R. Fourer, D. Gay, B. Kernighan, AMPL, 2nd edition 2003, chapter 15.
        assertReels(47, 110, "20x48 45x35 50x24 55x10 75x8");
    }

    @Test
    void paperMill_needs73() {
        // The article "Cutting stock problem" of a free encyclopedia.
        assertReels(
                73,
                5600,
                "1380x22 1520x25 1560x12 1710x14 1820x18 1880x18 1930x20 2000x10 2050x12 2100x14 2140x16 2150x18"
                        + " 2200x20");
    }

    @Test
    void jump_needs334() {
        // Example in the documentation of JuMP, an open modelling library; lengths times ten.
        assertReels(
                334,
                1000,
                "750x189 538x33 530x36 510x41 502x35 322x37 308x44 298x49 201x37 162x36 145x42 110x33 86x47 82x35"
                        + " 66x49 51x42");
    }

    @Test
    void tightForFirstFit_needs6() {
        // G. Dosa, "The tight bound of first fit decreasing bin-packing algorithm", ESCAPE 2007, LNCS 4614.
        assertReels(6, 100, "51x4 27x4 26x4 23x8");
    }

    @Test
    void martelloToth_needs3() {
        // S. Martello, P. Toth, Knapsack Problems, Wiley 1990, chapter 8.
        assertReels(3, 100, "49x1 41x1 34x1 33x1 29x1 26x2 22x1 20x1 19x1");
    }

    @Test
    void gilmoreGomory_costs170() {
        // P. C. Gilmore, R. E. Gomory, Operations Research 9 (1961) 849-859. Duals are not unique, their sum is.
        List<Long> lengths = List.of(2L, 3L, 4L);
        PatternProblem problem = new PatternProblem(
                List.of(Item.must(20), Item.must(10), Item.must(20)),
                List.of(
                        ReelKind.whole(5, 6, ReelKind.UNLIMITED, lengths),
                        ReelKind.whole(6, 7, ReelKind.UNLIMITED, lengths),
                        ReelKind.whole(9, 10, ReelKind.UNLIMITED, lengths)));
        PatternPlan plan = assertCost(170, problem);
        List<Long> duals = plan.root().duals();
        long sum = 20 * duals.get(0) + 10 * duals.get(1) + 20 * duals.get(2);
        assertEquals(170, (sum + plan.root().scale() / 2) / plan.root().scale());
    }

    @Test
    void monaci_costs1350() {
        // M. Monaci, Algorithms for packing and scheduling problems, Bologna 2002, instance 25_1; cost is the length.
        PatternProblem problem = sizes(
                "100 120 150",
                "39x1 20x1 39x1 38x1 56x1 98x1 66x1 86x1 51x1 13x1 54x1 1x1 43x1 82x1 38x1 22x1 46x1 86x1 98x1 81x1"
                        + " 77x1 92x1 56x1 7x1 58x1");
        assertCost(1350, problem);
    }

    @Test
    void fieldhouse_needs6_thoughTheProgramSays5() {
        // M. Fieldhouse, "The duality gap in trim problems", SICUP Bulletin 5(4) 1990: bound 149/30.
        assertReels(6, 30, "15x3 10x5 6x9");
    }

    @Test
    void sixPieces_need3() {
        // T. Gau, "Counterexamples to the IRU property", SICUP Bulletin 12(3) 1994, equivalent six-piece form.
        assertReels(3, 60, "30x1 22x1 20x1 19x1 12x2");
    }

    @Test
    void fivePieces_need3() {
        // Found by search: within the demand the bound is 7/3, without it 2.
        assertReels(3, 18, "10x1 9x1 6x2 4x1");
    }

    @Test
    void martelloTothFamily_needs4() {
        // S. Martello, P. Toth, Knapsack Problems, Wiley 1990, chapter 8: the simple bound is 3.
        assertReels(4, 100, "70x1 60x1 50x1 33x3 11x1 7x1 3x1");
    }

    @Test
    void toy_costs50() {
        assertCost(50, sizes("10 20", "12x2 8x3"));
    }

    @Test
    void surplus_canBeOnePiece() {
        // Bressan, Pimenta-Zanon, Sakuray, Materials 16(22) 2023 7133, first example: 6 reels, one surplus of 4.
        List<Long> lengths = List.of(7L, 9L, 11L, 14L, 19L, 21L, 26L);
        List<Item> items = List.of(2, 3, 2, 2, 2, 1, 1).stream().map(Item::must).toList();
        assertCost(6, new PatternProblem(items, List.of(ReelKind.whole(30, 1, ReelKind.UNLIMITED, lengths))));
        ReelKind keeping = new ReelKind(
                List.of(Run.of(30)),
                ReelKind.UNLIMITED,
                1000,
                0,
                lengths,
                left -> left < 4 ? 0 : left == 30 ? 30 : left);
        // Six reels are opened and lose their 30 each, less the 4 that are worth keeping.
        assertCost(6 * 1030 - 4, new PatternProblem(items, List.of(keeping)));
    }

    private static void assertReels(long expected, long capacity, String pieces) {
        List<Long> lengths = new ArrayList<>();
        List<Integer> demands = new ArrayList<>();
        for (String piece : pieces.split(" ")) {
            lengths.add(Long.parseLong(piece.split("x")[0]));
            demands.add(Integer.parseInt(piece.split("x")[1]));
        }
        assertCost(expected, PatternProblem.oneLength(capacity, lengths, demands));
    }

    private static PatternProblem sizes(String stock, String pieces) {
        List<Long> lengths = new ArrayList<>();
        List<Item> items = new ArrayList<>();
        for (String piece : pieces.split(" ")) {
            lengths.add(Long.parseLong(piece.split("x")[0]));
            items.add(Item.must(Integer.parseInt(piece.split("x")[1])));
        }
        List<ReelKind> reels = new ArrayList<>();
        for (String size : stock.split(" ")) {
            long length = Long.parseLong(size);
            reels.add(ReelKind.whole(length, length, ReelKind.UNLIMITED, lengths));
        }
        return new PatternProblem(items, reels);
    }

    private static PatternPlan assertCost(long expected, PatternProblem problem) {
        PatternPlan plan = PatternPacker.pack(problem, EFFORT);
        PlanReferee.check(problem, plan);
        assertEquals(expected, plan.cost());
        assertTrue(plan.complete());
        assertTrue(plan.proven(), () -> "bound " + plan.bound());
        return plan;
    }
}
