package bitterend.quoting;

import bitterend.demand.Piece;
import bitterend.quoting.sharing.Cutting;
import bitterend.quoting.sharing.NewRope;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;

/** Packs the pieces of a rope on sizes of new reels until what is taken of each can be had. */
final class SizeSearch {
    private final QuoteBasis basis;
    private final BiFunction<NewRope, List<Piece>, Cutting> cutter;

    SizeSearch(QuoteBasis basis, BiFunction<NewRope, List<Piece>, Cutting> cutter) {
        this.basis = basis;
        this.cutter = cutter;
    }

    /**
     * The sizes and the cutting.
     *
     * @param freightPaid suppliers whose order is so large that nothing is charged for its way
     */
    BoughtRope bought(String rope, List<Piece> pieces, Set<String> freightPaid) {
        SizeChoice choice = basis.sizes(rope, freightPaid, pieces, pieces);
        Cutting cutting = cutter.apply(choice.rope(), pieces);
        while (choice.giveUpOne(cutting.reels(), true)) {
            cutting = cutter.apply(choice.rope(), pieces);
        }
        return new BoughtRope(choice, cutting);
    }
}
