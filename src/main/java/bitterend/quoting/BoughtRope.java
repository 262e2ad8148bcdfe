package bitterend.quoting;

import bitterend.measure.UnitPrice;
import bitterend.quoting.sharing.Cutting;
import bitterend.quoting.sharing.NewReel;
import bitterend.quoting.sharing.NewRope;
import java.util.Comparator;
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

    /** What a metre comes to of the reel cut that is the cheapest by the metre, rounded down: no metre costs less than that. */
    UnitPrice byMetre() {
        return cutting.reels().keySet().stream()
                .map(NewReel::byMetre)
                .min(Comparator.comparingLong(UnitPrice::millisPerMetre))
                .orElseThrow(() -> new IllegalStateException("no reel is cut"));
    }

    /** The cheapest offer, which may be one that comes freight paid to this request alone. */
    private UnitPrice lowest(UnitPrice offered) {
        return sizes().isEmpty() || offered.millisPerMetre() < byMetre().millisPerMetre() ? offered : byMetre();
    }

    /** What is told of it. */
    RopeBuying told(QuoteBasis basis) {
        String id = rope().rope().id();
        return new RopeBuying(sizes(), basis.market().leftOut(id), choice.notTaken(), lowest(basis.lowest(id)));
    }
}
