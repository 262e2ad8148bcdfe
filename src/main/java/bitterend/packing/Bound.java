package bitterend.packing;

import bitterend.measure.Cost;
import bitterend.packing.proof.ProofTree;
import java.util.Collections;
import java.util.List;

/**
 * No plan for these ropes that leaves no more work undone costs less than {@code best}.
 *
 * <p>With integer duals pi, U the weight left undone and mu its price, both by class k, w the weight of a piece in its
 * class ({@link Urgency}), and Z of a reel the largest {@code sum of pi - scale * cost} over all ways to draw from it (at
 * least 0), the root is at most
 *
 * <pre>ceil((sum over pieces of min(pi, mu_k * w) - sum over classes of mu_k * U_k - sum over reels of Z) / scale)</pre>
 *
 * <p>with U = 0 the term {@code mu * w} being left out. It holds for every plan whose undone work costs no more at these
 * prices. Matched sets, split orders and moved pieces are left out of the root: they can only add to the cost.
 *
 * @param ropes the ropes that were packed together
 * @param best the proven bound
 * @param root the part of it that the duals below prove; not above {@code best}
 * @param scale how many units of a dual make 1/1000 minor unit; at least 1
 * @param undone what this plan leaves undone of these ropes (U)
 * @param undonePrices price of a unit of weight in each class (mu), the first class first, in units of a dual
 * @param duals an integer price for every piece
 * @param cases what is proven by cases beyond that, sets and split orders seen
 */
public record Bound(
        List<String> ropes,
        Cost best,
        Cost root,
        long scale,
        Undone undone,
        List<Long> undonePrices,
        List<Dual> duals,
        Cases cases) {
    public Bound {
        if (scale < 1) {
            throw new IllegalArgumentException("scale must be at least 1: " + scale);
        }
        if (undonePrices.size() != Undone.CLASSES) {
            throw new IllegalArgumentException("a price for each class: " + undonePrices);
        }
        ropes = List.copyOf(ropes);
        undonePrices = List.copyOf(undonePrices);
        duals = List.copyOf(duals);
    }

    /** A bound of which nothing is proven by cases. */
    public Bound(
            List<String> ropes,
            Cost best,
            Cost root,
            long scale,
            Undone undone,
            List<Long> undonePrices,
            List<Dual> duals) {
        this(ropes, best, root, scale, undone, undonePrices, duals, Cases.NONE);
    }

    /**
     * What of {@link #best} is written down so that anyone can work it out again: by the duals or by cases. The rest was
     * raised by a search that left no proof.
     */
    public Cost shown() {
        return cases.costs().stream().map(CostProof::cost).reduce(root, (a, b) -> a.compareTo(b) >= 0 ? a : b);
    }

    /** The same bound with proofs by cases. */
    public Bound with(Cases proven) {
        return new Bound(ropes, best, root, scale, undone, undonePrices, duals, proven);
    }

    /** Prices of undone work that are all nothing. */
    public static List<Long> noPrices() {
        return Collections.nCopies(Undone.CLASSES, 0L);
    }

    /**
     * The dual price of pieces that are alike.
     *
     * @param pieces their ids
     * @param price price of each, in units of a dual; never negative
     */
    public record Dual(List<String> pieces, long price) {
        public Dual {
            pieces = List.copyOf(pieces);
        }
    }

    /**
     * Proofs by cases.
     *
     * @param costs each that no plan that leaves no more undone in any class costs less than an amount
     * @param least each that no plan leaves less undone of a class
     */
    public record Cases(List<CostProof> costs, List<LeastProof> least) {
        /** Nothing is proven by cases. */
        public static final Cases NONE = new Cases(List.of(), List.of());

        public Cases {
            costs = List.copyOf(costs);
            least = List.copyOf(least);
        }
    }

    /**
     * No plan that leaves no more undone in any class costs less.
     *
     * @param cost not above {@code best}
     * @param proof the proof
     */
    public record CostProof(Cost cost, ProofTree proof) {}

    /**
     * No plan that leaves no more undone than this one in the classes before leaves less in a class.
     *
     * @param urgency the class, from 1
     * @param weight the least weight; not above what this plan leaves
     * @param proof the proof
     */
    public record LeastProof(int urgency, long weight, ProofTree proof) {
        public LeastProof {
            if (urgency < 1 || urgency > Undone.CLASSES) {
                throw new IllegalArgumentException("a class from 1 to " + Undone.CLASSES + ": " + urgency);
            }
        }
    }
}
