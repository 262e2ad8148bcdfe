package bitterend.packing.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.packing.check.BestLoads.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.LongUnaryOperator;
import org.junit.jupiter.api.Test;

final class BestLoadsTest {
    /** Many short pieces fill the table, few long ones stay in the list: both against every load by hand. */
    @Test
    void most_isTheBestOfEveryLoad() {
        Random random = new Random(3);
        for (int i = 0; i < 400; i++) {
            int step = 1 + random.nextInt(3);
            int room = 20 + random.nextInt(300);
            List<Kind> kinds = new ArrayList<>();
            for (int kind = 0; kind < 1 + random.nextInt(12); kind++) {
                long size = (1 + random.nextInt(i % 2 == 0 ? 15 : 90)) * (long) step;
                kinds.add(new Kind(size, random.nextInt(50), 1 + random.nextInt(9)));
            }
            LongUnaryOperator left = load -> Math.max(0, 40 - load / 3);
            long most = BestLoads.of(kinds, room, Long.MAX_VALUE).orElseThrow().most(room, left);
            assertEquals(byHand(kinds, room, left), most, () -> kinds + " in " + room);
        }
    }

    /** The worth of every load piece by piece; none is Long.MIN_VALUE. */
    private static long byHand(List<Kind> kinds, int room, LongUnaryOperator left) {
        long[] best = new long[room + 1];
        java.util.Arrays.fill(best, Long.MIN_VALUE);
        best[0] = 0;
        for (Kind kind : kinds) {
            for (int piece = 0; piece < kind.count(); piece++) {
                for (int load = room; load >= kind.size(); load--) {
                    long before = best[(int) (load - kind.size())];
                    if (before != Long.MIN_VALUE) {
                        best[load] = Math.max(best[load], before + kind.worth());
                    }
                }
            }
        }
        long most = Long.MIN_VALUE;
        for (int load = 1; load <= room; load++) {
            if (best[load] != Long.MIN_VALUE) {
                most = Math.max(most, best[load] + left.applyAsLong(load));
            }
        }
        return most;
    }
}
