package bitterend.quoting;

import bitterend.quoting.sharing.Cutting;
import bitterend.quoting.sharing.NewRope;
import java.util.List;

/**
 * A rope of a request on the new reels that it is priced on.
 *
 * @param choice how the sizes were chosen
 * @param cutting the pieces of all its lines, cut from reels of these sizes alone
 */
record BoughtRope(SizeChoice choice, Cutting cutting) {
    NewRope rope() {
        return cutting.rope();
    }

    /** The sizes with how many of each are taken. */
    List<RopeBuying.Size> sizes() {
        return choice.sizes(cutting.reels());
    }

    /** What is told of it. */
    RopeBuying told(QuoteBasis basis) {
        String id = rope().rope().id();
        return new RopeBuying(sizes(), basis.market().leftOut(id), choice.notTaken(), basis.lowest(id));
    }
}
