package bitterend.packing.loads;

/** What a stage is after, and from which bound on nothing better is left to be found. */
final class Goal {
    /** No smaller difference can be paid. */
    private static final long COIN = 1000;

    private final LoadModel model;
    private final Plans plans;
    private final int stage;
    /** What may stay undone by class, pieces that fit nowhere included. */
    private final long[] allowed;

    Goal(LoadModel model, Plans plans, int stage, long[] allowed) {
        this.model = model;
        this.plans = plans;
        this.stage = stage;
        this.allowed = allowed;
    }

    Plans plans() {
        return plans;
    }

    /** A bound that proves the best plan, in units. */
    long cutoff() {
        Plans.Standing best = plans.best();
        if (stage == Item.NONE) {
            return keepsTo(best.undone(), LoadModel.CLASSES)
                    ? Math.floorDiv(best.cost() - COIN, model.unit) + 1
                    : WorkBound.IMPOSSIBLE;
        }
        return keepsTo(best.undone(), stage)
                ? (best.undone()[stage] - model.floor[stage] - 1) * Penalty.unit(model) + 1
                : WorkBound.IMPOSSIBLE;
    }

    /** Whether no class of the first few has more undone than is allowed. */
    private boolean keepsTo(long[] undone, int classes) {
        for (int k = 0; k < classes; k++) {
            if (undone[k] > allowed[k]) {
                return false;
            }
        }
        return true;
    }
}
