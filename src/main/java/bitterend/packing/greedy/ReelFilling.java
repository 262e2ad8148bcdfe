package bitterend.packing.greedy;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.RunLoad;
import bitterend.packing.SubsetFill;
import java.math.BigInteger;
import java.util.List;
import java.util.stream.IntStream;

/** Fills one run after the other: of all runs, each filled as full as can be, the one that is cheapest by the metre. */
final class ReelFilling {
    private final Bench bench;
    private final Homes homes;
    private final int nodeLimit;

    ReelFilling(Bench bench, Homes homes, int nodeLimit) {
        this.bench = bench;
        this.homes = homes;
        this.nodeLimit = nodeLimit;
    }

    private record Filling(Slot slot, List<Piece> pieces, Cost price, Length length) {
        boolean isCheaperByTheMetreThan(Filling other) {
            return big(price.millis())
                            .multiply(big(other.length.mm()))
                            .compareTo(big(other.price.millis()).multiply(big(length.mm())))
                    < 0;
        }

        private static BigInteger big(long value) {
            return BigInteger.valueOf(value);
        }
    }

    /** Fills the cheapest run and says whether any piece found a place. Pieces come longest first. */
    boolean fillCheapest(List<Piece> open) {
        Filling best = null;
        for (Slot slot : homes.all()) {
            List<Piece> eligible = eligible(open, slot);
            if (eligible.isEmpty()) {
                continue;
            }
            Filling filling = fill(slot, eligible);
            if (!filling.pieces().isEmpty() && (best == null || filling.isCheaperByTheMetreThan(best))) {
                best = filling;
            }
        }
        if (best == null) {
            return false;
        }
        for (Piece piece : best.pieces()) {
            bench.place(piece, best.slot());
        }
        return true;
    }

    private List<Piece> eligible(List<Piece> open, Slot slot) {
        return open.stream()
                .filter(piece -> homes.isHome(piece, slot))
                .filter(piece -> bench.hasRoom(piece, slot))
                .toList();
    }

    private Filling fill(Slot slot, List<Piece> eligible) {
        Length loss = slot.draw().loss();
        List<Piece> pieces = fullest(slot, eligible, loss);
        Length length = pieces.stream().map(piece -> slot.cut(piece)).reduce(Length.ZERO, Length::plus);
        return new Filling(slot, pieces, bench.priceOf(pieces, slot), length);
    }

    /** The pieces that fill the run best; the last piece needs no cut loss behind it. */
    private List<Piece> fullest(Slot slot, List<Piece> longestFirst, Length loss) {
        RunLoad load = bench.loadOf(slot);
        Length room = slot.length().plus(loss).minus(load.sum()).minus(loss.times(load.pieces()));
        long[] sizes = longestFirst.stream()
                .mapToLong(piece -> slot.cut(piece).plus(loss).mm())
                .toArray();
        boolean[] chosen = SubsetFill.straightOn(sizes, room.mm(), nodeLimit + 1);
        return IntStream.range(0, sizes.length)
                .filter(i -> chosen[i])
                .mapToObj(longestFirst::get)
                .toList();
    }
}
