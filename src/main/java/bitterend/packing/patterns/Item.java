package bitterend.packing.patterns;

/**
 * Pieces that are alike: how many are wanted, and how bad it is to leave one out. Their length stands with the reel
 * kind, since it may depend on the rope.
 *
 * @param demand how many, at least one
 * @param weight of leaving one unplanned; {@link #MUST} ranks above every other weight
 */
public record Item(int demand, long weight) {
    /** The weight of an item that may not be left out while anything else could be. */
    public static final long MUST = 0;

    public Item {
        if (demand < 1) {
            throw new IllegalArgumentException("demand must be at least 1: " + demand);
        }
        if (weight < 0) {
            throw new IllegalArgumentException("weight must not be negative: " + weight);
        }
    }

    /** An item that must be planned. */
    public static Item must(int demand) {
        return new Item(demand, MUST);
    }
}
