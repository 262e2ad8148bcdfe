package bitterend.packing.proof;

import java.util.List;

/**
 * The whole numbers at a leaf, dual prices in units of {@code scale} to 1/1000 minor unit. Any numbers prove something;
 * good ones prove much. What is left out is 0.
 *
 * @param pieces pi: what a piece of a line pays to the reel it is cut from
 * @param orders sigma: what a run pays back once for each order that it touches
 * @param sets tau: the same for each matched set
 * @param undone mu: the price of a unit of weight left undone, by class of urgency, the first class first; never negative
 */
public record PriceList(List<PiecePrice> pieces, List<Touch> orders, List<Touch> sets, List<Long> undone) {
    public PriceList {
        pieces = List.copyOf(pieces);
        orders = List.copyOf(orders);
        sets = List.copyOf(sets);
        undone = List.copyOf(undone);
        if (undone.stream().anyMatch(price -> price < 0)) {
            throw new IllegalArgumentException("a price of leaving undone cannot be negative: " + undone);
        }
    }

    /**
     * The price of a piece on some rope. Of several that fit the narrowest counts: the reel's before the lot's before the
     * rack's.
     *
     * @param line the line, the first one of the proof being 0
     * @param where the rope that it holds for
     * @param price for one piece; of either sign
     */
    public record PiecePrice(int line, Holder where, long price) {}

    /**
     * A charge, taken once on a run from which anything of an order or set is cut.
     *
     * @param whose the order or the set
     * @param run the run
     * @param price never negative
     */
    public record Touch(String whose, RunOfReel run, long price) {
        public Touch {
            if (price < 0) {
                throw new IllegalArgumentException("a charge cannot be negative: " + price);
            }
        }
    }
}
