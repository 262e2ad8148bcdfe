package bitterend.packing.greedy;

import bitterend.packing.SubsetFill;
import bitterend.packing.bench.RackState;
import bitterend.packing.bench.Workbench;
import java.math.BigInteger;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Fills one run after the other: of all runs, each filled as full as can be, the one that is cheapest by the metre. */
final class ReelFilling {
    private final Workbench bench;
    private final RackState rack;
    private final int nodeLimit;

    ReelFilling(Workbench bench, RackState rack, int nodeLimit) {
        this.bench = bench;
        this.rack = rack;
        this.nodeLimit = nodeLimit;
    }

    /** What a run would be filled with, for what price in 1/1000 minor unit, and how long that is in mm. */
    private record Filling(int run, List<Integer> pieces, long price, long length) {
        boolean isCheaperByTheMetreThan(Filling other) {
            return BigInteger.valueOf(price)
                            .multiply(BigInteger.valueOf(other.length))
                            .compareTo(BigInteger.valueOf(other.price).multiply(BigInteger.valueOf(length)))
                    < 0;
        }
    }

    /** Fills the cheapest run and says whether any piece found a place. Pieces come longest first. */
    boolean fillCheapest(List<Integer> open) {
        Filling best = null;
        for (int run : bench.byId().runs().toArray()) {
            Filling filling = fill(run, open);
            if (filling != null && (best == null || filling.isCheaperByTheMetreThan(best))) {
                best = filling;
            }
        }
        if (best == null) {
            return false;
        }
        for (int piece : best.pieces()) {
            rack.place(piece, best.run());
        }
        return true;
    }

    private @Nullable Filling fill(int run, List<Integer> open) {
        int[] pieces = fullest(
                run,
                open.stream()
                        .mapToInt(Integer::intValue)
                        .filter(piece -> rack.fits(piece, run))
                        .toArray());
        long length = IntStream.of(pieces)
                .mapToLong(piece -> bench.sizeOn(piece, run))
                .sum();
        return pieces.length == 0
                ? null
                : new Filling(run, IntStream.of(pieces).boxed().toList(), rack.addedMillis(pieces, run), length);
    }

    /** The pieces that fill the run best; the last piece needs no cut loss behind it. */
    private int[] fullest(int run, int[] longestFirst) {
        long[] sizes = IntStream.of(longestFirst)
                .mapToLong(piece -> bench.sizeOn(piece, run) + bench.loss(run))
                .toArray();
        boolean[] chosen = SubsetFill.straightOn(sizes, rack.free(run) + bench.loss(run), nodeLimit + 1);
        return IntStream.range(0, sizes.length)
                .filter(i -> chosen[i])
                .map(i -> longestFirst[i])
                .toArray();
    }
}
