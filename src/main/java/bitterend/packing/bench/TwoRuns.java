package bitterend.packing.bench;

import java.util.List;
import java.util.SplittableRandom;

/** Divides the pieces of two runs between them anew: in one of the cheapest of all ways, by chance. */
final class TwoRuns {
    /** So many lots more than before may be paid for. */
    static final int MORE_LOTS = 1;

    private final CellRack rack;
    private final Workbench bench;
    private final SplittableRandom random;
    private final Portions portions;
    private final SumsReached reached = new SumsReached();
    /** What both draws cost beside the value of their loads, by whether the first and the second run are cut. */
    private final long[][] beside = new long[2][2];

    private long best;
    private int chosenSum;
    private int chosenLevel;

    TwoRuns(CellRack rack, SplittableRandom random) {
        this.rack = rack;
        bench = rack.bench;
        this.random = random;
        portions = new Portions(rack);
    }

    /**
     * Divides anew.
     *
     * @param lenience how much more than the cheapest way the one taken may cost
     * @return what it costs more than before
     */
    long divide(int one, int other, long lenience) {
        return rack.prices.room[one] <= rack.prices.room[other]
                ? fromShorter(one, other, lenience)
                : fromShorter(other, one, lenience);
    }

    /** Words of 64 sums that were worked out so far. */
    long spent() {
        return reached.spent();
    }

    private long fromShorter(int one, int other, long lenience) {
        List<Portion> all = portions.of(one, other);
        if (all.isEmpty()) {
            return 0;
        }
        priceBeside(one, other);
        long before = cost(one, rack.load[one], other, rack.load[other], rack.lots.splits());
        long splits = rack.lots.splits();
        int cells = 0;
        for (Portion portion : all) {
            cells += portion.cells();
            for (int piece : portion.pieces()) {
                rack.remove(piece);
            }
        }
        int most = Math.min(cells, rack.prices.room[one] - rack.load[one]);
        int least = Math.max(0, cells - rack.prices.room[other] + rack.load[other]);
        long inAnyCase = reach(all, one, other, most, splits);
        choose(all, one, other, new Span(least, most, cells, inAnyCase), lenience);
        return cost(one, rack.load[one], other, rack.load[other], rack.lots.splits()) - before;
    }

    /**
     * Which sums may come off the first run.
     *
     * @param least the second run holds no more of the rest
     * @param most that it holds
     * @param all cells of all portions
     * @param splits lots that are paid for at the lowest level
     */
    private record Span(int least, int most, int all, long splits) {}

    private void choose(List<Portion> all, int one, int other, Span span, long lenience) {
        look(one, other, span, Long.MAX_VALUE);
        if (lenience > 0) {
            look(one, other, span, best + lenience);
        }
        boolean[] onOne = reached.back(chosenSum, chosenLevel, all.size(), random);
        for (int i = 0; i < onOne.length; i++) {
            for (int piece : all.get(i).pieces()) {
                rack.place(piece, onOne[i] ? one : other);
            }
        }
    }

    /** Chooses by chance among the ways that cost no more than a limit, or among the cheapest where there is none. */
    private void look(int one, int other, Span span, long limit) {
        boolean cheapest = limit == Long.MAX_VALUE;
        best = limit;
        int ways = 0;
        for (int level = 0; level < reached.levels(); level++) {
            int sum = reached.next(level, span.least);
            while (sum >= 0 && sum <= span.most) {
                long cost = cost(one, other, span, sum, level);
                if (cheapest && cost < best) {
                    best = cost;
                    ways = 0;
                }
                if (cost <= best && random.nextInt(++ways) == 0) {
                    chosenSum = sum;
                    chosenLevel = level;
                }
                sum = reached.next(level, sum + 1);
            }
        }
    }

    private long cost(int one, int other, Span span, int sum, int level) {
        return cost(one, rack.load[one] + sum, other, rack.load[other] + span.all - sum, span.splits + level);
    }

    private long cost(int one, int oneLoad, int other, int otherLoad, long splits) {
        return beside[oneLoad > 0 ? 1 : 0][otherLoad > 0 ? 1 : 0]
                + rack.prices.drop(one, oneLoad)
                + rack.prices.drop(other, otherLoad)
                + splits * bench.splitOrder;
    }

    private void priceBeside(int one, int other) {
        int oneLoad = rack.load[one];
        int otherLoad = rack.load[other];
        int oneReel = bench.runTable.reelOf[one];
        int otherReel = bench.runTable.reelOf[other];
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                rack.load[one] = i;
                rack.load[other] = j;
                beside[i][j] = rack.prices.beside(oneReel, rack.load)
                        + (oneReel == otherReel ? 0 : rack.prices.beside(otherReel, rack.load));
            }
        }
        rack.load[one] = oneLoad;
        rack.load[other] = otherLoad;
    }

    /** Works out what can be reached; returns the lots that are paid for at the lowest level. */
    private long reach(List<Portion> all, int one, int other, int most, long splitsBefore) {
        LotCharge[] charges = charges(all, bench.runTable.lotOf[one], bench.runTable.lotOf[other]);
        long splits = rack.lots.splits();
        int range = 0;
        for (LotCharge charge : charges) {
            splits += charge.least();
            range += charge.most() - charge.least();
        }
        reached.begin(most, 1 + (int) Math.min(range, splitsBefore - splits + MORE_LOTS));
        for (int first = 0; first < charges.length; first = endOf(all, first)) {
            addOrder(all, first, charges[first]);
        }
        reached.end();
        return splits;
    }

    private void addOrder(List<Portion> all, int first, LotCharge charge) {
        int from = reached.last();
        int end = endOf(all, first);
        int cells = 0;
        for (int i = first; i < end; i++) {
            cells += all.get(i).cells();
            reached.add(i, all.get(i).cells());
        }
        if (charge.differs()) {
            reached.charge(first, end, cells, from, charge.aboveLeast());
        }
    }

    /** What each order pays, at its first portion. */
    private LotCharge[] charges(List<Portion> all, int oneLot, int otherLot) {
        LotCharge[] charges = new LotCharge[all.size()];
        for (int first = 0; first < charges.length; first++) {
            Portion portion = all.get(first);
            boolean isFirst = first == 0 || all.get(first - 1).order() != portion.order();
            charges[first] = isFirst && portion.order() != Workbench.NONE
                    ? rack.lots.charge(
                            portion.order(), oneLot, otherLot, oneLot != otherLot && endOf(all, first) > first + 1)
                    : LotCharge.NOTHING;
        }
        return charges;
    }

    /** The portion after those of the order of one. */
    private static int endOf(List<Portion> all, int first) {
        int order = all.get(first).order();
        int end = first + 1;
        while (end < all.size() && all.get(end).order() == order) {
            end++;
        }
        return end;
    }
}
