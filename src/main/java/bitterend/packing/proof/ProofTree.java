package bitterend.packing.proof;

import java.util.List;

/**
 * A proof by cases. For prices pi, sigma, tau, mu at a leaf, and U the weight that may be left undone of each class k, no
 * plan of the leaf costs less than
 *
 * <pre>
 * (- sum over k of mu U + sum over orders of Phi - sum over reels of Z) / scale
 * Phi = least, over the lots T that the order lies on, of  scale * splitOrder * (lots beyond the first of each rope)
 *       - sigma of their runs + sum over its pieces of min(mu w, least pi in T)
 *       + sum over its sets of min(mu w of the set, least over holders of [pi of its pieces - tau of the holder's runs])
 * Z   = most, over all ways to draw from the reel, of pi - sigma - tau - scale * cost of the draw
 * </pre>
 *
 * and the whole tree proves what its worst leaf proves. Where the least weight of a class is proven, nothing costs money:
 * a unit of weight of that class undone counts {@code scale}, later classes count nothing.
 *
 * @param lines the pieces that prices speak of; every piece at most once
 * @param scale how many units of a price make 1/1000 minor unit, or a unit of weight; at least 1
 * @param prices the price lists that leaves refer to
 * @param root all plans
 */
public record ProofTree(List<Line> lines, long scale, List<PriceList> prices, ProofNode root) {
    /** Files keep no tree in which more statements stand above one another. */
    public static final int DEEPEST = 500;

    public ProofTree {
        if (scale < 1) {
            throw new IllegalArgumentException("scale must be at least 1: " + scale);
        }
        lines = List.copyOf(lines);
        prices = List.copyOf(prices);
    }

    /**
     * Pieces that are alike: same lengths, weight, class of urgency and matched set. They may be of several orders.
     *
     * @param pieces their ids
     */
    public record Line(List<String> pieces) {
        public Line {
            pieces = List.copyOf(pieces);
        }
    }

    /** The tree of one leaf. */
    public static ProofTree of(List<Line> lines, long scale, PriceList prices) {
        return new ProofTree(lines, scale, List.of(prices), new ProofNode.Leaf(0));
    }
}
