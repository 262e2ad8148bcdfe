package bitterend.packing.loads;

import java.util.Arrays;

/** Prices while weight left undone is to be least. */
final class Penalty {
    private static final long MOST_UNIT = 20_000;
    private static final long LEAST_UNIT = 100;

    private Penalty() {}

    /** Units of a dual for a unit of weight: as fine as tables hold. */
    static long unit(LoadModel model) {
        long fitting = PricedReels.MOST_GAIN / model.mostPieces / (2 * heaviestClass(model) + 1);
        return Math.max(LEAST_UNIT, Math.min(MOST_UNIT, fitting));
    }

    /** More than leaving a piece undone can save, as far as tables hold it. */
    static int dear(LoadModel model) {
        return (int) Math.min(PricedReels.MOST_GAIN / model.mostPieces, unit(model) * (2 * heaviestClass(model) + 1));
    }

    private static long heaviestClass(LoadModel model) {
        return Arrays.stream(model.everything()).max().orElse(0);
    }
}
