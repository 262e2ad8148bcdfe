package bitterend.packing.bench;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.greedy.GreedyPacker;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Trades that are made and those that are not, beside what is reckoned anew from the whole rack. */
final class TradeTest {
    private static final int SHOPS = 120;
    private static final int TRIES = 300;

    private final int[] seen = new int[3];

    @Test
    void trade_isMadeWhereItIsAllowedAndPays_andElseNothingChanges() {
        for (long seed = 0; seed < SHOPS; seed++) {
            Workbench bench = new Workbench(RandomShop.of(seed, ShopSize.DAY));
            if (bench.splitOrder > 0) {
                RackState rack = RackState.of(bench, new GreedyPacker(bench).firstFit());
                SplittableRandom dice = new SplittableRandom(seed);
                int[] planned = IntStream.range(0, bench.pieces())
                        .filter(rack::isPlanned)
                        .toArray();
                for (int i = 0; i < TRIES && planned.length > 2; i++) {
                    attempt(rack, planned, dice, "seed " + seed + ", try " + i);
                }
            }
        }
        assertTrue(seen[0] > 20, "made: " + seen[0]);
        assertTrue(seen[1] > 20, "wanted and not allowed: " + seen[1]);
        assertTrue(seen[2] > 20, "wanted, allowed and too dear: " + seen[2]);
    }

    /** Two pieces change places, or up to three go where one of their order is already. */
    private void attempt(RackState rack, int[] planned, SplittableRandom dice, String name) {
        int[] moved = dice.ints(1 + dice.nextInt(3), 0, planned.length)
                .map(i -> planned[i])
                .distinct()
                .toArray();
        int[] to = Arrays.stream(moved)
                .map(piece -> rack.runOf(towards(rack, piece, planned, dice)))
                .toArray();
        if (moved.length == 2 && dice.nextBoolean()) {
            to = new int[] {rack.runOf(moved[1]), rack.runOf(moved[0])};
        }
        int[] before = rack.places().clone();
        int[] wanted = before.clone();
        for (int i = 0; i < moved.length; i++) {
            wanted[moved[i]] = to[i];
        }
        boolean made = isToBeMade(rack, moved, wanted);
        assertEquals(made, new Trade(rack).make(moved, to), name);
        assertArrayEquals(made ? wanted : before, rack.places(), name);
        assertEquals(anew(rack, made ? wanted : before).millis(), rack.millis(), name);
    }

    private static int towards(RackState rack, int piece, int[] planned, SplittableRandom dice) {
        int order = rack.bench.pieceTable.orderOf[piece];
        int[] mates = Arrays.stream(planned)
                .filter(other -> order != Workbench.NONE && rack.bench.pieceTable.orderOf[other] == order)
                .toArray();
        return mates.length > 0 && dice.nextInt(4) > 0
                ? mates[dice.nextInt(mates.length)]
                : planned[dice.nextInt(planned.length)];
    }

    private boolean isToBeMade(RackState rack, int[] moved, int[] wanted) {
        for (int piece : moved) {
            if (!rack.bench.isHome(piece, wanted[piece])) {
                return false;
            }
        }
        RackState then = anew(rack, wanted);
        boolean closer = then.lots.closeness() > rack.lots.closeness();
        long splits = then.lots.splits() - rack.lots.splits();
        if (splits > 0 || (splits == 0 && !closer)) {
            return false;
        }
        if (!isAllowed(then, moved)) {
            seen[1]++;
            return false;
        }
        long change = then.millis() - rack.millis();
        boolean pays = change < 0 || (change == 0 && closer);
        seen[pays ? 0 : 2]++;
        return pays;
    }

    private static boolean isAllowed(RackState then, int[] moved) {
        Workbench bench = then.bench;
        for (int run = 0; run < bench.runs(); run++) {
            if (then.free(run) < -bench.runTable.loss[run]) {
                return false;
            }
        }
        for (int piece : moved) {
            int job = bench.jobOf[piece];
            Set<Integer> holders = new HashSet<>();
            for (int mate : bench.jobs[job]) {
                if (bench.isSet(job) && then.isPlanned(mate)) {
                    holders.add(bench.holderOf(job, then.runOf(mate)));
                }
            }
            if (holders.size() > 1) {
                return false;
            }
        }
        return true;
    }

    private static RackState anew(RackState rack, int[] places) {
        RackState then = new RackState(rack.bench);
        for (int piece = 0; piece < places.length; piece++) {
            if (places[piece] != Workbench.NONE) {
                then.place(piece, places[piece]);
            }
        }
        return then;
    }
}
