package bitterend.packing.rules;

import static org.optaplanner.core.api.score.stream.ConstraintCollectors.count;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.countDistinct;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.sumLong;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.packing.Eligibility;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.Undone;
import bitterend.packing.model.Bench;
import bitterend.packing.model.PieceToCut;
import bitterend.packing.model.ReelOnRack;
import bitterend.packing.model.RunOfReel;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;
import org.optaplanner.core.api.score.stream.bi.BiConstraintStream;
import org.optaplanner.core.api.score.stream.uni.UniConstraintStream;

/**
 * The rules of {@link Rule}, hard ones first. Money is in 1/1000 minor unit, work left undone in the weight of {@link
 * bitterend.packing.Urgency}, on a level for each class; a hard rule counts what is broken. That no piece crosses a flaw
 * needs no rule here: a piece lies on one run, and runs are clear of flaws.
 */
public final class BenchRules implements ConstraintProvider {
    /** Name of the one term that is not a rule of the bench and not money. */
    public static final String SHAPING = "shaping";

    private @Nullable Streams shared;

    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        List<Constraint> rules = new ArrayList<>(List.of(
                sameRope(factory),
                onHold(factory),
                reserved(factory),
                ownRope(factory),
                certificate(factory),
                useBy(factory),
                begunSet(factory),
                pinned(factory),
                issued(factory),
                comesInTime(factory),
                fitsTheRun(factory),
                oneLot(factory),
                oneReel(factory),
                stockValue(factory),
                opening(factory),
                changing(factory),
                handling(factory),
                splitOrder(factory),
                movedPiece(factory),
                shaping(factory)));
        for (int urgency = 1; urgency <= Undone.CLASSES; urgency++) {
            rules.add(planned(factory, urgency));
            rules.add(setWhole(factory, urgency));
        }
        return rules.toArray(Constraint[]::new);
    }

    Constraint sameRope(ConstraintFactory factory) {
        return pieceOffReel(factory, Rule.SAME_ROPE, Eligibility::sameRope);
    }

    Constraint onHold(ConstraintFactory factory) {
        return pieceOffReel(factory, Rule.ON_HOLD, Eligibility::onHold);
    }

    Constraint reserved(ConstraintFactory factory) {
        return pieceOffReel(factory, Rule.RESERVED, Eligibility::reserved);
    }

    Constraint ownRope(ConstraintFactory factory) {
        return pieceOffReel(factory, Rule.OWN_ROPE, Eligibility::ownRope);
    }

    Constraint certificate(ConstraintFactory factory) {
        return pieceOffReel(factory, Rule.CERTIFICATE, Eligibility::certificate);
    }

    Constraint useBy(ConstraintFactory factory) {
        return pieceOffReel(factory, Rule.USE_BY, Eligibility::useBy);
    }

    Constraint begunSet(ConstraintFactory factory) {
        return pieceOffReel(factory, Rule.BEGUN_SET, Eligibility::begunSet);
    }

    Constraint pinned(ConstraintFactory factory) {
        return pieceOffReel(factory, Rule.PINNED, Eligibility::pinned);
    }

    Constraint issued(ConstraintFactory factory) {
        return pieceOffReel(factory, Rule.ISSUED, Eligibility::issued);
    }

    Constraint comesInTime(ConstraintFactory factory) {
        return pieceOffReel(factory, Rule.COMES_IN_TIME, Eligibility::comesInTime);
    }

    Constraint fitsTheRun(ConstraintFactory factory) {
        return runs(factory)
                .filter((run, load) -> run.over(load) > 0)
                .penalizeLong(Bench.ONE_HARD, (run, load) -> run.over(load))
                .asConstraint(Rule.FITS_THE_RUN.name());
    }

    Constraint oneLot(ConstraintFactory factory) {
        return matched(factory, Bond.ONE_LOT, Rule.ONE_LOT);
    }

    Constraint oneReel(ConstraintFactory factory) {
        return matched(factory, Bond.ONE_REEL, Rule.ONE_REEL);
    }

    Constraint planned(ConstraintFactory factory, int urgency) {
        return factory.forEachIncludingNullVars(PieceToCut.class)
                .filter(piece -> piece.urgency() == urgency && !piece.isPlanned())
                .penalizeLong(Bench.oneUndone(urgency), PieceToCut::weight)
                .asConstraint(inClass(Rule.PLANNED, urgency));
    }

    /** The pieces of a set that lacks some weigh as if they were not planned either. */
    Constraint setWhole(ConstraintFactory factory, int urgency) {
        return factory.forEach(PieceToCut.class)
                .filter(piece -> piece.isMatched() && piece.urgency() == urgency)
                .groupBy(PieceToCut::matchedSet, count(), sumLong(PieceToCut::weight))
                .filter((set, planned, weight) -> planned < set.size())
                .penalizeLong(Bench.oneUndone(urgency), (set, planned, weight) -> weight)
                .asConstraint(inClass(Rule.SET_WHOLE, urgency));
    }

    private static String inClass(Rule rule, int urgency) {
        return rule.name() + " " + urgency;
    }

    Constraint stockValue(ConstraintFactory factory) {
        return runs(factory)
                .penalizeLong(Bench.ONE_MILLI, (run, load) -> run.dropMillis(load))
                .asConstraint(Rule.STOCK_VALUE.name());
    }

    Constraint opening(ConstraintFactory factory) {
        return reels(factory)
                .filter((reel, skipped) -> reel.openingMillis() > 0)
                .penalizeLong(Bench.ONE_MILLI, (reel, skipped) -> reel.openingMillis())
                .asConstraint(Rule.OPENING.name());
    }

    Constraint changing(ConstraintFactory factory) {
        return reels(factory)
                .filter((reel, skipped) -> reel.changingMillis() > 0)
                .penalizeLong(Bench.ONE_MILLI, (reel, skipped) -> reel.changingMillis())
                .asConstraint(Rule.CHANGING.name());
    }

    Constraint handling(ConstraintFactory factory) {
        return reels(factory)
                .filter((reel, skipped) -> skipped > 0)
                .penalizeLong(Bench.ONE_MILLI, (reel, skipped) -> reel.handlingMillis() * skipped)
                .asConstraint(Rule.HANDLING.name());
    }

    Constraint splitOrder(ConstraintFactory factory) {
        return factory.forEach(PieceToCut.class)
                .filter(PieceToCut::hasOrderMates)
                .groupBy(
                        piece -> piece.piece().order(),
                        piece -> piece.plannedRun().reel().reel().rope(),
                        piece -> piece.plannedRun().reel().splitMillis(),
                        countDistinct(piece -> piece.plannedRun().reel().lot()))
                .filter((order, rope, split, lots) -> lots > 1)
                .penalizeLong(Bench.ONE_MILLI, (order, rope, split, lots) -> (lots - 1) * split)
                .asConstraint(Rule.SPLIT_ORDER.name());
    }

    Constraint movedPiece(ConstraintFactory factory) {
        return factory.forEach(PieceToCut.class)
                .filter(PieceToCut::isMoved)
                .penalizeLong(
                        Bench.ONE_MILLI, piece -> piece.plannedRun().reel().movedMillis())
                .asConstraint(Rule.MOVED_PIECE.name());
    }

    /** Not money: a run half full costs most, so that the search fills some runs and spares others. */
    Constraint shaping(ConstraintFactory factory) {
        return runs(factory)
                .penalizeLong(Bench.ONE_MILLI, (run, load) -> run.shapingMillis(load))
                .asConstraint(SHAPING);
    }

    /** A piece on a reel that one hard rule bars for it. Hardly any piece gets past the first filter. */
    private static Constraint pieceOffReel(ConstraintFactory factory, Rule rule, BarsReel bars) {
        return factory.forEach(PieceToCut.class)
                .filter(BenchRules::isAstray)
                .filter(piece -> bars.reason(piece).isPresent())
                .penalize(Bench.ONE_HARD)
                .asConstraint(rule.name());
    }

    private static boolean isAstray(PieceToCut piece) {
        return !piece.mayComeOff(piece.plannedRun());
    }

    private static Constraint matched(ConstraintFactory factory, Bond bond, Rule rule) {
        return factory.forEach(PieceToCut.class)
                .filter(piece -> piece.piece().matching().bond() == bond)
                .groupBy(PieceToCut::matchedSet, countDistinct(piece -> piece.matchedSet()
                        .bondOf(piece.plannedRun())))
                .filter((set, places) -> places > 1)
                .penalizeLong(Bench.ONE_HARD, (set, places) -> places - 1L)
                .asConstraint(rule.name());
    }

    private BiConstraintStream<RunOfReel, Long> runs(ConstraintFactory factory) {
        return streams(factory).runs;
    }

    private BiConstraintStream<ReelOnRack, Integer> reels(ConstraintFactory factory) {
        return streams(factory).reels;
    }

    /** Rules that look at the same runs or reels hang on one stream, so that the solver keeps their sums once. */
    private Streams streams(ConstraintFactory factory) {
        Streams streams = shared;
        if (streams == null || streams.factory != factory) {
            UniConstraintStream<PieceToCut> planned = factory.forEach(PieceToCut.class);
            streams = new Streams(
                    factory,
                    planned.groupBy(PieceToCut::plannedRun, sumLong(piece -> piece.sizeOn(piece.plannedRun()))),
                    planned.groupBy(piece -> piece.plannedRun().reel(), new SkippedRuns()));
            shared = streams;
        }
        return streams;
    }

    private record Streams(
            ConstraintFactory factory,
            BiConstraintStream<RunOfReel, Long> runs,
            BiConstraintStream<ReelOnRack, Integer> reels) {}

    /** One hard rule of a piece on a reel. */
    private interface BarsReel {
        Optional<Reason> apply(Eligibility eligibility, Piece piece, Reel reel);

        default Optional<Reason> reason(PieceToCut piece) {
            return apply(
                    piece.eligibility(),
                    piece.piece(),
                    piece.plannedRun().reel().reel());
        }
    }
}
