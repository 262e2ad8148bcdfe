package bitterend.quoting.sharing;

import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.Packer;

/**
 * What some work costs, as far as it is known, in 1/1000 minor unit.
 *
 * @param proven no way of cutting costs less
 * @param found what the best known way costs
 */
public record CostRange(long proven, long found) {
    /** Of work that could not be cut whole: anything. */
    static final CostRange UNKNOWN = new CostRange(0, Long.MAX_VALUE / 4);

    public CostRange {
        if (proven > found) {
            throw new IllegalArgumentException("proven " + proven + " above found " + found);
        }
    }

    /** What a packing and its bounds say; a packing that leaves pieces out says nothing of what they cost. */
    public static CostRange of(Packer.Result result, int pieces) {
        if (result.packing().places().size() < pieces) {
            return UNKNOWN;
        }
        long proven = result.bounds().stream()
                .filter(bound -> bound.undone().isNone())
                .map(Bound::best)
                .reduce(Cost.ZERO, Cost::plus)
                .millis();
        long found = result.cost().millis();
        return new CostRange(Math.min(proven, found), found);
    }

    public boolean isExact() {
        return proven == found;
    }

    public boolean isUnknown() {
        return equals(UNKNOWN);
    }
}
