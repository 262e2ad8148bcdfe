package bitterend.packing;

import bitterend.catalogue.Rope;
import bitterend.measure.Length;
import bitterend.stock.Reel;
import java.util.Optional;

/**
 * What is left of a reel that nobody can know before it is measured: the plan counts it as scrap, because what is certain
 * of it is too short to keep, but by the ledger it may be worth keeping.
 *
 * @param reel id of the reel
 * @param byLedger rope behind the last cut if the booked length is true, inner wraps not counted
 * @param certain what of it is there at least
 * @param keepFrom from which length on the shop keeps this rope: what the plan counts as worth anything
 */
public record UncertainRest(String reel, Length byLedger, Length certain, Length keepFrom) {

    /** What is to be measured of this reel after its draw; nothing when its rest stays, or is scrap for certain. */
    public static Optional<UncertainRest> of(PackingProblem problem, Reel reel, ReelDraw draw) {
        return problem.valueOn(reel).keepFrom().flatMap(from -> of(problem.ropeOn(reel), from, reel, draw));
    }

    private static Optional<UncertainRest> of(Rope rope, Length keepFrom, Reel reel, ReelDraw draw) {
        RunDraw last = draw.runs().get(draw.runs().size() - 1);
        boolean uncertain = reel.contents().uncertainty().isPositive()
                && last.rest() == RunDraw.Rest.SCRAP
                && !reel.custody().isCustomersOwn();
        if (!uncertain || possible(reel, last, rope.cutting().loss()).isShorterThan(keepFrom)) {
            return Optional.empty();
        }
        Length behind = reel.length()
                .minus(draw.leadTrim())
                .minus(reel.contents().innerWraps())
                .minus(last.to());
        Length byLedger = last.left().plus(behind);
        return Optional.of(new UncertainRest(
                reel.id(), byLedger, byLedger.minus(reel.contents().uncertainty()), keepFrom));
    }

    /** The longest sound stretch behind the last cut if the booked length is true. */
    private static Length possible(Reel reel, RunDraw last, Length loss) {
        Length cutTo = last.cuts().isEmpty()
                ? last.to()
                : last.cuts().get(last.cuts().size() - 1).to();
        Length from = reel.contents().leadTrim().plus(cutTo).plus(loss);
        return reel.possibleRuns().stream()
                .filter(run -> run.index() >= last.run())
                .map(run -> run.to().minus(Length.max(from, run.from())))
                .reduce(Length.ZERO, Length::max);
    }
}
