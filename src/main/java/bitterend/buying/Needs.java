package bitterend.buying;

import java.util.ArrayList;
import java.util.List;

/**
 * What the reels of a purchase are needed for: each line is left out alone, and the orders are packed without it where it takes
 * a packing to see who has no rope then.
 */
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

    /** The purchase with what each of its lines is needed for: those that are known stay as they are. */
    Purchase of(Purchase purchase) {
        return purchase.with(atOnce(purchase).lines().stream()
                .map(line -> line.need().known() ? line : packed(purchase, line))
                .toList());
    }

    /**
     * The same of the lines that need no packing: all reels of the set, and those whose pieces no other reel can hold, for
     * then each other piece stays where it is.
     */
    Purchase atOnce(Purchase purchase) {
        return purchase.with(purchase.lines().stream()
                .map(line -> line.need().known() ? line : atOnce(purchase, line))
                .toList());
    }

    private ReelLine atOnce(Purchase purchase, ReelLine line) {
        ReelSet others = purchase.set().with(line.offer().id(), 0);
        if (others.reels() == 0) {
            return needed(line, purchase, rack.unplanned());
        }
        List<String> cut = line.need().cut();
        return search.holding(others).holdsNone(cut) ? needed(line, purchase, cut) : line;
    }

    private ReelLine packed(Purchase purchase, ReelLine line) {
        if (!pace.goesOn()) {
            return line;
        }
        ReelSet others = purchase.set().with(line.offer().id(), 0);
        return needed(line, purchase, search.bought(others).purchase().unplanned());
    }

    private static ReelLine needed(ReelLine line, Purchase purchase, List<String> unplanned) {
        List<String> without = new ArrayList<>(unplanned);
        without.removeAll(purchase.unplanned());
        return line.needed(new Need(line.need().cut(), without, true));
    }
}
