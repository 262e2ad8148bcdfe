package bitterend.quoting.sharing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Every load that the pieces of a job can make on one new reel, by the rope it takes, with the highest sum of prices; a
 * plain table filled piece by piece.
 */
final class LoadTable {
    private static final long UNREACHED = -1;

    private final NewRope rope;
    private final List<Kind> kinds = new ArrayList<>();

    LoadTable(NewRope rope) {
        this.rope = rope;
    }

    private record Kind(long taken, long price, int count) {}

    /**
     * How far a load is priced above its cost.
     *
     * @param offered the prices of its pieces
     * @param allowed its cost, in the same units
     */
    record Excess(long offered, long allowed) {
        static final Excess NONE = new Excess(0, 0);

        boolean isPositive() {
            return offered > allowed;
        }

        long by() {
            return offered - allowed;
        }
    }

    /** Pieces that are alike; taken in millimetres, loss included. */
    void add(long taken, long price, int count) {
        if (taken <= rope.room()) {
            kinds.add(new Kind(taken, price, (int) Math.min(count, rope.room() / taken)));
        }
    }

    /** The load that is priced furthest above its cost; nothing when none is. */
    Excess worst(long scale) {
        long step = kinds.stream().mapToLong(Kind::taken).reduce(0, LoadTable::gcd);
        Excess worst = Excess.NONE;
        if (step == 0) {
            return worst;
        }
        long[] best = table(step);
        for (int cell = 1; cell < best.length; cell++) {
            if (best[cell] > worst.by()) {
                Excess here = new Excess(best[cell], Math.multiplyExact(scale, rope.cost(cell * step)));
                worst = here.by() > worst.by() ? here : worst;
            }
        }
        return worst;
    }

    private long[] table(long step) {
        long[] best = new long[Math.toIntExact(rope.room() / step) + 1];
        Arrays.fill(best, UNREACHED);
        best[0] = 0;
        for (Kind kind : kinds) {
            for (int left = kind.count(), bundle = 1; left > 0; left -= bundle, bundle *= 2) {
                int together = Math.min(bundle, left);
                add(best, kind.taken() / step * together, Math.multiplyExact(kind.price(), together));
            }
        }
        return best;
    }

    /** Takes a bundle or leaves it. */
    private static void add(long[] best, long cells, long price) {
        for (int cell = best.length - 1; cell >= cells; cell--) {
            long before = best[Math.toIntExact(cell - cells)];
            if (before != UNREACHED) {
                best[cell] = Math.max(best[cell], before + price);
            }
        }
    }

    static long gcd(long a, long b) {
        return BigInteger.valueOf(a).gcd(BigInteger.valueOf(b)).longValueExact();
    }
}
