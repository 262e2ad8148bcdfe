package bitterend.packing.model;

import bitterend.catalogue.Rope;
import bitterend.packing.PackingProblem;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;

/** What all reels of one rope share: its number, its cut loss, its worth by length. */
final class RopeOnRack {
    private final int number;
    private final long loss;
    private final long opening;
    private final int shapingPercent;
    private final KnownValues ours;
    private final KnownValues customers = new KnownValues(StockValue.NOTHING);

    RopeOnRack(PackingProblem problem, Rope rope, int number, int shapingPercent) {
        this.number = number;
        loss = rope.cutting().loss().mm();
        opening = problem.prices().opening().millis();
        this.shapingPercent = shapingPercent;
        StockValue value = problem.values().get(rope.id());
        ours = new KnownValues(value == null ? StockValue.NOTHING : value);
    }

    int number() {
        return number;
    }

    /** Rope lost at each cut, in millimetres. */
    long loss() {
        return loss;
    }

    /** A share of the price of opening a reel, or of a hundredth of a run's worth where that is more. */
    long shapeMillis(long worth) {
        return Math.max(opening, worth / 100) * shapingPercent / 100;
    }

    KnownValues valuesOf(Reel reel) {
        return reel.custody().isCustomersOwn() ? customers : ours;
    }
}
