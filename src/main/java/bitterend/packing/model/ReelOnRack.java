package bitterend.packing.model;

import bitterend.demand.Piece.Bond;
import bitterend.packing.DrawPrice;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Prices;
import bitterend.stock.Reel;
import org.optaplanner.core.api.domain.lookup.PlanningId;

/** A reel of the rack with what touching it costs, in 1/1000 minor unit. */
public final class ReelOnRack {
    private final Reel reel;
    private final String lot;
    private final String lotOfRope;
    private final long opening;
    private final long changing;
    private final Prices prices;

    ReelOnRack(PackingProblem problem, Reel reel) {
        this.reel = reel;
        lot = PlanPrice.lotOf(reel);
        lotOfRope = PlanPrice.holderOf(Bond.ONE_LOT, reel);
        long fixed = DrawPrice.fixedCost(problem, reel).millis();
        changing = Math.min(fixed, problem.prices().changing().millis());
        opening = fixed - changing;
        prices = problem.prices();
    }

    @PlanningId
    public String id() {
        return reel.id();
    }

    public Reel reel() {
        return reel;
    }

    /** The lot the reel came from; a reel of unknown lot is a lot of its own. */
    public String lot() {
        return lot;
    }

    /** What a matched set must share: the reel, or the lot of one rope. */
    public String holderOf(Bond bond) {
        return bond == Bond.ONE_REEL ? reel.id() : lotOfRope;
    }

    /** The opening of a full reel, less the credit for its age; zero for a part reel. */
    public long openingMillis() {
        return opening;
    }

    /** The changing, less what the credit for age left over after the opening. */
    public long changingMillis() {
        return changing;
    }

    /** Cutting off one run whole and putting it aside. */
    public long handlingMillis() {
        return prices.handling().millis();
    }

    /** An order that takes rope from one more lot. */
    public long splitMillis() {
        return prices.splitOrder().millis();
    }

    /** A piece that moves here from the reel of an earlier plan. */
    public long movedMillis() {
        return prices.movedPiece().millis();
    }

    @Override
    public String toString() {
        return reel.id();
    }
}
