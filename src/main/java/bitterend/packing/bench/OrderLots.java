package bitterend.packing.bench;

/**
 * Over how many lots each order is spread, kept up while pieces move. An order's lots are counted rope by rope. The counts
 * of an order of few pieces are looked for among as many; a larger order has one for each lot.
 */
final class OrderLots {
    /** From so many pieces an order has a count for each lot: so that all of them take little room. */
    private static final int MANY = 16;

    private final int[] ropeOfLot;
    private final int ropes;
    /** The counts of an order begin here and end where those of the next begin. */
    private final int[] first;

    private final int[] lotOf;
    private final int[] count;
    private final int[] onRope;
    private long splits;
    private long closeness;

    /**
     * @param piecesOf how many pieces each order has
     * @param ropeOfLot number of the rope of each lot
     */
    OrderLots(int[] piecesOf, int[] ropeOfLot) {
        this.ropeOfLot = ropeOfLot;
        ropes = java.util.Arrays.stream(ropeOfLot).max().orElse(-1) + 1;
        first = new int[piecesOf.length + 1];
        for (int order = 0; order < piecesOf.length; order++) {
            int counts = piecesOf[order] < MANY ? Math.min(piecesOf[order], ropeOfLot.length) : ropeOfLot.length;
            first[order + 1] = Math.addExact(first[order], counts);
        }
        lotOf = new int[first[piecesOf.length]];
        count = new int[first[piecesOf.length]];
        onRope = new int[Math.multiplyExact(piecesOf.length, ropes)];
    }

    void add(int order, int lot) {
        int at = placeFor(order, lot);
        int rope = ropeOf(order, lot);
        splits += count[at] == 0 ? 1 : 0;
        splits -= onRope[rope] == 0 ? 1 : 0;
        closeness += 2L * count[at] + 1;
        lotOf[at] = lot;
        count[at]++;
        onRope[rope]++;
    }

    void remove(int order, int lot) {
        int at = placeFor(order, lot);
        int rope = ropeOf(order, lot);
        count[at]--;
        onRope[rope]--;
        closeness -= 2L * count[at] + 1;
        splits -= count[at] == 0 ? 1 : 0;
        splits += onRope[rope] == 0 ? 1 : 0;
    }

    /** Where the pieces of an order on a lot are counted; a place that counts nothing if there is none yet. */
    private int placeFor(int order, int lot) {
        int end = first[order + 1];
        if (end - first[order] == ropeOfLot.length) {
            return first[order] + lot;
        }
        int free = end;
        for (int at = first[order]; at < end; at++) {
            if (count[at] == 0) {
                free = at;
            } else if (lotOf[at] == lot) {
                return at;
            }
        }
        return free;
    }

    private int onLot(int order, int lot) {
        int at = placeFor(order, lot);
        return at < first[order + 1] ? count[at] : 0;
    }

    private int ropeOf(int order, int lot) {
        return order * ropes + ropeOfLot[lot];
    }

    /** Whether one more lot would split an order once more. */
    boolean wouldSplit(int order, int lot) {
        return onRope[ropeOf(order, lot)] > 0 && onLot(order, lot) == 0;
    }

    /** Lots after the first of all orders together. */
    long splits() {
        return splits;
    }

    /** Sum of the squares of pieces on a lot: the more of an order is on one lot, the larger. */
    long closeness() {
        return closeness;
    }

    /** Whether an order takes rope from a lot. */
    boolean uses(int order, int lot) {
        return onLot(order, lot) > 0;
    }

    /** Whether a lot gives an order one piece alone, and another lot of the same rope gives it more. */
    boolean isStray(int order, int lot) {
        return onRope[ropeOf(order, lot)] > 1 && onLot(order, lot) == 1;
    }

    /** Whether an order is spread over several lots of the rope of this one. */
    boolean isSplit(int order, int lot) {
        return onRope[ropeOf(order, lot)] > onLot(order, lot);
    }

    /**
     * For how many lots more an order pays when some of its pieces, which lie nowhere yet, come off two lots.
     *
     * @param several whether they are more than one
     */
    LotCharge charge(int order, int one, int other, boolean several) {
        long bare = splits;
        add(order, one);
        int all = (int) (splits - bare);
        int some = all;
        if (several) {
            add(order, other);
            some = (int) (splits - bare);
            remove(order, other);
        }
        remove(order, one);
        add(order, other);
        int none = (int) (splits - bare);
        remove(order, other);
        return new LotCharge(all, Math.max(some, Math.max(all, none)), none);
    }
}
