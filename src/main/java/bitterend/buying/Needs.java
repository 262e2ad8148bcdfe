package bitterend.buying;

import java.util.ArrayList;
import java.util.List;

/** What the reels of a purchase are needed for: each line is left out alone, and the orders are packed without it. */
final class Needs {
    private final SetSearch search;
    private final Purchase rack;
    private final EffortShare pace;

    /** @param rack what nothing bought leaves without rope */
    Needs(SetSearch search, Purchase rack, EffortShare pace) {
        this.search = search;
        this.rack = rack;
        this.pace = pace;
    }

    /** The purchase with what each of its lines is needed for. */
    Purchase of(Purchase purchase) {
        return purchase.with(
                purchase.lines().stream().map(line -> line(purchase, line)).toList());
    }

    private ReelLine line(Purchase purchase, ReelLine line) {
        ReelSet others = purchase.set().with(line.offer().id(), 0);
        if (others.reels() > 0 && !pace.goesOn()) {
            return line;
        }
        List<String> without = new ArrayList<>(
                others.reels() == 0
                        ? rack.unplanned()
                        : search.bought(others).purchase().unplanned());
        without.removeAll(purchase.unplanned());
        return line.needed(new Need(line.need().cut(), without, true));
    }
}
