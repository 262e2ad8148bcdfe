package bitterend.work.rack;

import bitterend.catalogue.Rope;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import bitterend.work.CoilCurves;
import bitterend.work.ShopNow;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What reels are worth on the rack of a day, by the curves that plans go by: a question that writes nothing. */
public final class ReelWorth {
    private final ShopNow now;
    private final CoilCurves curves;
    private final Map<String, StockValue> ofRope = new HashMap<>();

    public ReelWorth(ShopNow now, LocalDate day) {
        this.now = now;
        curves = new CoilCurves(now.shop(), day);
    }

    /** Of its sound rope, run by run; a customer's own rope, and a rope that the shop does not list, is worth nothing to it. */
    public Cost of(Reel reel) {
        Optional<Rope> rope = now.shop().catalogue().findRope(reel.rope());
        if (rope.isEmpty() || reel.custody().isCustomersOwn()) {
            return Cost.ZERO;
        }
        StockValue value = ofRope.computeIfAbsent(reel.rope(), id -> curves.value(rope.get()));
        return reel.runs().stream()
                .map(run -> reel.full() ? value.unopened(run.length()) : value.of(run.length()))
                .reduce(Cost.ZERO, Cost::plus);
    }

    /** What so much new rope costs to buy again; nothing where the shop does not list the rope. */
    public Optional<Cost> replacing(String rope, Length length) {
        return now.shop().catalogue().findRope(rope).map(each -> each.price().of(length));
    }
}
