package bitterend.packing.bench;

/** Over how many lots each order is spread, kept up while pieces move. An order's lots are counted rope by rope. */
public final class OrderLots {
    private final int[] ropeOfLot;
    private final int[][] onLot;
    private final int[][] onRope;
    private long splits;
    private long closeness;

    /**
     * @param orders how many orders there are
     * @param ropeOfLot number of the rope of each lot
     */
    public OrderLots(int orders, int[] ropeOfLot) {
        this.ropeOfLot = ropeOfLot.clone();
        int ropes = java.util.Arrays.stream(ropeOfLot).max().orElse(-1) + 1;
        onLot = new int[orders][ropeOfLot.length];
        onRope = new int[orders][ropes];
    }

    public void add(int order, int lot) {
        splits += onLot[order][lot] == 0 ? 1 : 0;
        splits -= onRope[order][ropeOfLot[lot]] == 0 ? 1 : 0;
        closeness += 2L * onLot[order][lot] + 1;
        onLot[order][lot]++;
        onRope[order][ropeOfLot[lot]]++;
    }

    public void remove(int order, int lot) {
        onLot[order][lot]--;
        onRope[order][ropeOfLot[lot]]--;
        closeness -= 2L * onLot[order][lot] + 1;
        splits -= onLot[order][lot] == 0 ? 1 : 0;
        splits += onRope[order][ropeOfLot[lot]] == 0 ? 1 : 0;
    }

    /** Whether one more lot would split an order once more. */
    boolean wouldSplit(int order, int lot) {
        return onLot[order][lot] == 0 && onRope[order][ropeOfLot[lot]] > 0;
    }

    /** Lots after the first of all orders together. */
    public long splits() {
        return splits;
    }

    /** Sum of the squares of pieces on a lot: the more of an order is on one lot, the larger. */
    public long closeness() {
        return closeness;
    }

    /** Whether an order takes rope from a lot. */
    public boolean uses(int order, int lot) {
        return onLot[order][lot] > 0;
    }

    /** Whether a lot gives an order one piece alone, and another lot of the same rope gives it more. */
    public boolean isStray(int order, int lot) {
        return onLot[order][lot] == 1 && onRope[order][ropeOfLot[lot]] > 1;
    }

    /** Whether an order is spread over several lots of the rope of this one. */
    public boolean isSplit(int order, int lot) {
        return onRope[order][ropeOfLot[lot]] > onLot[order][lot];
    }
}
