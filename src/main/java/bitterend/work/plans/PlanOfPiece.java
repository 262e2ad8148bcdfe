package bitterend.work.plans;

import bitterend.exchange.PlanFolder.Kept;
import bitterend.finding.Findings;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.stock.Movement;
import bitterend.work.Gate;
import bitterend.work.Plans;
import bitterend.work.ShopNow;
import java.util.Optional;

/**
 * The plan of a piece, with the reel that it cuts it from: of a piece that is cut the plan that it was booked by, of any other
 * the one in force. What was cut off without a plan has none.
 *
 * @param plan the plan
 * @param reel the reel
 */
public record PlanOfPiece(Kept plan, String reel) {
    /** Nothing where no plan that is kept cuts it. */
    public static Optional<PlanOfPiece> of(ShopNow shop, Plans plans, String piece) {
        Optional<Movement> cut = shop.rack().map(rack -> rack.cut().get(piece));
        Optional<Kept> plan = cut.isPresent()
                ? bookedBy(plans, cut.get().entry().origin().plan())
                : plans.inForce().flatMap(plans::needed);
        return plan.flatMap(kept -> reel(kept, piece).map(draw -> new PlanOfPiece(kept, draw.reel())));
    }

    /** The plan of the name that the ledger knows it by, which begins with its number; nothing where another has that number now. */
    public static Optional<Kept> bookedBy(Plans plans, String name) {
        return Gate.number(name)
                .flatMap(number -> plans.read(number, new Findings()))
                .filter(plan -> Gate.name(plan).equals(name));
    }

    private static Optional<ReelDraw> reel(Kept plan, String piece) {
        return plan.document().plan().draws().stream()
                .filter(draw -> draw.cuts().stream().map(Cut::piece).anyMatch(piece::equals))
                .findFirst();
    }
}
