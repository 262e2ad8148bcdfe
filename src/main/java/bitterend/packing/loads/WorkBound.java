package bitterend.packing.loads;

/**
 * What the work of a day must at least pay for by whole prices: every order takes the lots, every set the holder, and
 * every piece the place or the penalty of staying undone, that is cheapest for it.
 */
final class WorkBound {
    /** What is paid where nothing is possible. */
    static final long IMPOSSIBLE = Long.MAX_VALUE / 4;

    private final LoadModel model;
    private final Domain domain;
    private final Duals duals;
    /** Price of a further lot. */
    private final long split;

    private final int stage;

    /** @param stage the class whose weight is to be least, or {@link Item#NONE} where money is */
    WorkBound(LoadModel model, Domain domain, Duals duals, int stage) {
        this.model = model;
        this.domain = domain;
        this.duals = duals;
        this.stage = stage;
        split = stage == Item.NONE ? model.split : 0;
    }

    /** The sum over all work, less what may stay undone at its price. */
    long paid() {
        long sum = 0;
        for (int k = 0; k < domain.allowed.length; k++) {
            sum -= k == stage ? 0 : duals.undone[k] * domain.allowed[k];
        }
        for (Item item : model.items) {
            if (item.order == Item.NONE && item.set == Item.NONE) {
                sum = plus(sum, single(item, duals.piece[item.index][0]));
            }
        }
        for (SetOfPieces set : model.sets) {
            if (set.order == Item.NONE) {
                sum = plus(sum, set(set, -1));
            }
        }
        for (OrderOnLots order : model.orders) {
            sum = plus(sum, order(order));
        }
        return sum;
    }

    private static long plus(long a, long b) {
        return a >= IMPOSSIBLE || b >= IMPOSSIBLE ? IMPOSSIBLE : a + b;
    }

    /** All pieces of an item at this price, or undone as far as they must and may be. */
    private long single(Item item, long price) {
        long penalty = duals.undone[item.urgency] * item.weight;
        int undone = penalty < price ? domain.mostUndone[item.index] : domain.leastUndone[item.index];
        return penalty * undone + price * (item.count() - undone);
    }

    /** @param lots of its order that are taken, a bit each; -1 where they do not matter */
    private long set(SetOfPieces set, int lots) {
        long best = IMPOSSIBLE;
        if (domain.mayStayUndone(set)) {
            best = duals.undone[set.urgency()] * set.weight();
        }
        if (domain.mustStayUndone(set)) {
            return best;
        }
        for (int h = 0; h < set.holders.size(); h++) {
            boolean open = (domain.holders[set.index] >> h & 1) != 0;
            boolean taken = set.order == Item.NONE || lots == -1 || (lots >> set.lotOfHolder[h] & 1) != 0;
            if (open && taken) {
                best = Math.min(best, onHolder(set, h));
            }
        }
        return best;
    }

    private long onHolder(SetOfPieces set, int holder) {
        long sum = 0;
        for (Item item : set.items) {
            sum += (long) duals.piece[item.index][holder] * item.count();
        }
        for (int reel : set.holders.get(holder)) {
            for (RunOfCells run : model.reels[reel].runs) {
                sum -= duals.charge(true, set.index, run.index);
            }
        }
        return sum;
    }

    private long order(OrderOnLots order) {
        int may = domain.mayLots[order.index];
        int must = domain.mustLots[order.index];
        int free = may & ~must;
        long[] charges = charges(order);
        long best = IMPOSSIBLE;
        int part = free;
        while (true) {
            best = Math.min(best, order(order, part | must, charges));
            if (part == 0) {
                return best;
            }
            part = (part - 1) & free;
        }
    }

    /** What its charges on each lot come to. */
    private long[] charges(OrderOnLots order) {
        long[] charges = new long[order.lots.size()];
        for (int l = 0; l < charges.length; l++) {
            for (int reel : order.lots.get(l)) {
                for (RunOfCells run : model.reels[reel].runs) {
                    charges[l] += duals.charge(false, order.index, run.index);
                }
            }
        }
        return charges;
    }

    private long order(OrderOnLots order, int lots, long[] charges) {
        long sum = 0;
        int ropes = 0;
        for (int l = 0; l < charges.length; l++) {
            if ((lots >> l & 1) != 0) {
                sum += split - charges[l];
                ropes |= 1 << order.rope[l];
            }
        }
        sum -= split * Integer.bitCount(ropes);
        for (Item item : order.items) {
            sum = plus(sum, onLots(item, lots));
        }
        for (SetOfPieces set : order.sets) {
            sum = plus(sum, set(set, lots));
        }
        return sum;
    }

    private long onLots(Item item, int lots) {
        long cheapest = IMPOSSIBLE;
        int[] prices = duals.piece[item.index];
        for (int l = 0; l < prices.length; l++) {
            if ((lots >> l & 1) != 0) {
                cheapest = Math.min(cheapest, prices[l]);
            }
        }
        if (cheapest < IMPOSSIBLE) {
            return single(item, cheapest);
        }
        long penalty = duals.undone[item.urgency] * item.weight;
        return domain.mostUndone[item.index] >= item.count() ? penalty * item.count() : IMPOSSIBLE;
    }
}
