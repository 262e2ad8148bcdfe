package bitterend.quoting.sharing;

import bitterend.measure.CommonDivisor;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

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
     * @param taken what its pieces take, in millimetres
     */
    record Excess(long offered, long allowed, long taken) {
        static final Excess NONE = new Excess(0, 0, 0);

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
        long step = step();
        Excess worst = Excess.NONE;
        if (step == 0) {
            return worst;
        }
        long[] best = fill(step, new ArrayList<>(), new ArrayList<>());
        for (int cell = 1; cell < best.length; cell++) {
            if (best[cell] > worst.by()) {
                long taken = cell * step;
                Excess here = new Excess(best[cell], Math.multiplyExact(scale, rope.cost(taken)), taken);
                worst = here.by() > worst.by() ? here : worst;
            }
        }
        return worst;
    }

    /** How many pieces of each length, by what one takes, make the dearest load that takes so much. */
    Map<Long, Integer> load(long taken) {
        Map<Long, Integer> load = new TreeMap<>();
        long step = step();
        int cell = Math.toIntExact(taken / step);
        List<BitSet> chosen = new ArrayList<>();
        List<Kind> bundles = new ArrayList<>();
        fill(step, bundles, chosen);
        for (int i = bundles.size() - 1; i >= 0; i--) {
            if (chosen.get(i).get(cell)) {
                Kind bundle = bundles.get(i);
                load.merge(bundle.taken(), bundle.count(), Integer::sum);
                cell -= Math.toIntExact(bundle.taken() / step * bundle.count());
            }
        }
        return load;
    }

    private long step() {
        return kinds.stream().mapToLong(Kind::taken).reduce(0, CommonDivisor::of);
    }

    /** Fills the table bundle by bundle, and notes for each bundle at which cells it was taken. */
    private long[] fill(long step, List<Kind> bundles, List<BitSet> chosen) {
        long[] best = new long[Math.toIntExact(rope.room() / step) + 1];
        Arrays.fill(best, UNREACHED);
        best[0] = 0;
        for (Kind kind : kinds) {
            for (int left = kind.count(), bundle = 1; left > 0; left -= bundle, bundle *= 2) {
                int together = Math.min(bundle, left);
                bundles.add(new Kind(kind.taken(), kind.price(), together));
                chosen.add(add(best, kind.taken() / step * together, Math.multiplyExact(kind.price(), together)));
            }
        }
        return best;
    }

    /** Takes a bundle wherever that is dearer than leaving it. */
    private static BitSet add(long[] best, long cells, long price) {
        BitSet taken = new BitSet();
        for (int cell = best.length - 1; cell >= cells; cell--) {
            long before = best[Math.toIntExact(cell - cells)];
            if (before != UNREACHED && before + price > best[cell]) {
                best[cell] = before + price;
                taken.set(cell);
            }
        }
        return taken;
    }
}
