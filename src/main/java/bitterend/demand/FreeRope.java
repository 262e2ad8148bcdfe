package bitterend.demand;

import bitterend.catalogue.Termination.What;
import bitterend.measure.FineLength;

/**
 * The standing part while its ends are made: end A first, on slack rope that nothing has been drawn into yet; then end B, on
 * rope that the first splice has shortened and filled.
 */
final class FreeRope {
    private final FineLength clear;
    private final MadeEnd endA;
    private final MadeEnd endB;

    FreeRope(Leg leg) {
        this.clear = leg.standingPart().clear(leg.make().finished().exact());
        this.endA = leg.ends().get(0);
        this.endB = leg.ends().get(1);
    }

    /** Clear rope of the finished leg, throat to throat. */
    FineLength finished() {
        return clear;
    }

    /** Slack rope from throat to throat before either end is made: each splice will shorten it by its take-up. */
    FineLength slack() {
        return clear.plus(endA.length(What.TAKE_UP)).plus(endB.length(What.TAKE_UP));
    }

    /** Slack rope from the throat of an end to the other throat, when its turn has come. */
    FineLength betweenThroats(MadeEnd end) {
        return isFirst(end) ? slack() : clear.plus(endB.length(What.TAKE_UP));
    }

    /** The part of it that no splice fills yet. */
    FineLength free(MadeEnd end) {
        return isFirst(end) ? slack() : betweenThroats(end).minus(endA.length(What.FILLS));
    }

    private boolean isFirst(MadeEnd end) {
        return end.equals(endA);
    }
}
