package bitterend.packing;

import bitterend.measure.Length;

/**
 * What is cut from one run.
 *
 * @param sum cut lengths together
 * @param pieces how many
 */
public record RunLoad(Length sum, int pieces) {
    public static final RunLoad NONE = new RunLoad(Length.ZERO, 0);

    public RunLoad plus(Length cut) {
        return new RunLoad(sum.plus(cut), pieces + 1);
    }

    public RunLoad minus(Length cut) {
        return new RunLoad(sum.minus(cut), pieces - 1);
    }

    public boolean isEmpty() {
        return pieces == 0;
    }

    /** Whether the pieces fit a run: a cut loss lies between neighbours, none behind the last. */
    public boolean fits(Length run, Length loss) {
        return isEmpty() || !sum.plus(loss.times(pieces - 1L)).isLongerThan(run);
    }

    /** What is left of the run: every piece takes a cut loss, the last one as far as there is rope for it. */
    public Length leftOf(Length run, Length loss) {
        return Length.max(Length.ZERO, run.minus(sum).minus(loss.times(pieces)));
    }
}
