package bitterend.packing.rules;

import static org.optaplanner.core.api.score.stream.ConstraintCollectors.count;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.sumLong;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.toList;

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
 * The rules of {@link Rule}, hard ones first. Money is in 1/1000 minor unit, work left undone in the weight of
 * {@link bitterend.packing.Urgency}, on a level for each class; a hard rule counts what is broken. That no piece crosses a flaw needs no rule here:
 * a piece lies on one run, and runs are clear of flaws.
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

    Constraint fitsTheRun(ConstraintFactory factory) {
        return runs(factory)
                .filter((run, load) -> run.over(load.mm()) > 0)
                .penalizeLong(Bench.ONE_HARD, (run, load) -> run.over(load.mm()))
                .justifyWith(
                        (run, load, score) -> RuleJustification.of(Rule.FITS_THE_RUN, Sentences.tooLong(run, load)))
                .indictWith((run, load) -> List.copyOf(load.pieces()))
                .asConstraint(Rule.FITS_THE_RUN.name());
    }

    Constraint oneLot(ConstraintFactory factory) {
        return matched(factory, Bond.ONE_LOT, Rule.ONE_LOT, "one lot");
    }

    Constraint oneReel(ConstraintFactory factory) {
        return matched(factory, Bond.ONE_REEL, Rule.ONE_REEL, "one reel");
    }

    Constraint planned(ConstraintFactory factory, int urgency) {
        return factory.forEachIncludingNullVars(PieceToCut.class)
                .filter(piece -> piece.urgency() == urgency && !piece.isPlanned())
                .penalizeLong(Bench.oneUndone(urgency), PieceToCut::weight)
                .justifyWith((piece, score) -> RuleJustification.of(Rule.PLANNED, Sentences.notPlanned(piece)))
                .indictWith(List::of)
                .asConstraint(inClass(Rule.PLANNED, urgency));
    }

    /** The pieces of a set that lacks some weigh as if they were not planned either. */
    Constraint setWhole(ConstraintFactory factory, int urgency) {
        return factory.forEach(PieceToCut.class)
                .filter(piece -> piece.isMatched() && piece.urgency() == urgency)
                .groupBy(PieceToCut::matchedSet, count(), sumLong(PieceToCut::weight), toList())
                .filter((set, planned, weight, pieces) -> planned < set.size())
                .penalizeLong(Bench.oneUndone(urgency), (set, planned, weight, pieces) -> weight)
                .justifyWith((set, planned, weight, pieces, score) -> RuleJustification.of(
                        Rule.SET_WHOLE,
                        "only " + planned + " of the " + set.size() + " pieces of set " + set.name() + " are planned"))
                .indictWith((set, planned, weight, pieces) -> List.copyOf(pieces))
                .asConstraint(inClass(Rule.SET_WHOLE, urgency));
    }

    private static String inClass(Rule rule, int urgency) {
        return rule.name() + " " + urgency;
    }

    Constraint stockValue(ConstraintFactory factory) {
        return runs(factory)
                .penalizeLong(Bench.ONE_MILLI, (run, load) -> run.dropMillis(load.mm()))
                .justifyWith((run, load, score) -> RuleJustification.of(Rule.STOCK_VALUE, Sentences.drawn(run, load)))
                .indictWith((run, load) -> List.copyOf(load.pieces()))
                .asConstraint(Rule.STOCK_VALUE.name());
    }

    Constraint opening(ConstraintFactory factory) {
        return reels(factory)
                .filter((reel, skipped) -> reel.openingMillis() > 0)
                .penalizeLong(Bench.ONE_MILLI, (reel, skipped) -> reel.openingMillis())
                .justifyWith((reel, skipped, score) ->
                        RuleJustification.of(Rule.OPENING, reel.id() + " is a full reel and is opened"))
                .indictWith((reel, skipped) -> List.copyOf(skipped.pieces()))
                .asConstraint(Rule.OPENING.name());
    }

    Constraint changing(ConstraintFactory factory) {
        return reels(factory)
                .filter((reel, skipped) -> reel.changingMillis() > 0)
                .penalizeLong(Bench.ONE_MILLI, (reel, skipped) -> reel.changingMillis())
                .justifyWith((reel, skipped, score) ->
                        RuleJustification.of(Rule.CHANGING, reel.id() + " is fetched and put back"))
                .indictWith((reel, skipped) -> List.copyOf(skipped.pieces()))
                .asConstraint(Rule.CHANGING.name());
    }

    Constraint handling(ConstraintFactory factory) {
        return reels(factory)
                .filter((reel, skipped) -> skipped.runs() > 0)
                .penalizeLong(Bench.ONE_MILLI, (reel, skipped) -> reel.handlingMillis() * skipped.runs())
                .justifyWith((reel, skipped, score) -> RuleJustification.of(
                        Rule.HANDLING,
                        Sentences.counted(skipped.runs(), "run") + " of " + reel.id()
                                + " cut off whole and put aside to reach what lies behind"))
                .indictWith((reel, skipped) -> List.copyOf(skipped.pieces()))
                .asConstraint(Rule.HANDLING.name());
    }

    Constraint splitOrder(ConstraintFactory factory) {
        return factory.forEach(PieceToCut.class)
                .filter(PieceToCut::hasOrderMates)
                .groupBy(
                        piece -> piece.piece().order(),
                        piece -> piece.plannedRun().reel().reel().rope(),
                        new Spread.Collector(piece -> piece.plannedRun().reel().lot()))
                .filter((order, rope, lots) -> lots.extra() > 0)
                .penalizeLong(Bench.ONE_MILLI, (order, rope, lots) -> lots.extra() * lots.splitMillis())
                .justifyWith((order, rope, lots, score) -> RuleJustification.of(
                        Rule.SPLIT_ORDER,
                        "order " + order + " takes " + rope + " from " + lots.places() + " lots: " + lots.names()))
                .indictWith((order, rope, lots) -> List.copyOf(lots.pieces()))
                .asConstraint(Rule.SPLIT_ORDER.name());
    }

    Constraint movedPiece(ConstraintFactory factory) {
        return factory.forEach(PieceToCut.class)
                .filter(PieceToCut::isMoved)
                .penalizeLong(
                        Bench.ONE_MILLI, piece -> piece.plannedRun().reel().movedMillis())
                .justifyWith((piece, score) -> RuleJustification.of(
                        Rule.MOVED_PIECE,
                        piece.getId() + " moves from " + piece.earlierReel() + " to "
                                + piece.plannedRun().reel()))
                .indictWith(List::of)
                .asConstraint(Rule.MOVED_PIECE.name());
    }

    /** Not money: a run half full costs most, so that the search fills some runs and spares others. */
    Constraint shaping(ConstraintFactory factory) {
        return runs(factory)
                .penalizeLong(Bench.ONE_MILLI, (run, load) -> run.shapingMillis(load.mm()))
                .asConstraint(SHAPING);
    }

    /** A piece on a reel that one hard rule bars for it. Hardly any piece gets past the first filter. */
    private static Constraint pieceOffReel(ConstraintFactory factory, Rule rule, BarsReel bars) {
        return factory.forEach(PieceToCut.class)
                .filter(BenchRules::isAstray)
                .filter(piece -> bars.reason(piece).isPresent())
                .penalize(Bench.ONE_HARD)
                .justifyWith((piece, score) ->
                        new RuleJustification(bars.reason(piece).orElseThrow()))
                .indictWith(List::of)
                .asConstraint(rule.name());
    }

    private static boolean isAstray(PieceToCut piece) {
        return !piece.mayComeOff(piece.plannedRun());
    }

    private static Constraint matched(ConstraintFactory factory, Bond bond, Rule rule, String wanted) {
        return factory.forEach(PieceToCut.class)
                .filter(piece -> piece.piece().matching().bond() == bond)
                .groupBy(PieceToCut::matchedSet, new Spread.Collector(piece -> piece.matchedSet()
                        .bondOf(piece.plannedRun())))
                .filter((set, places) -> places.extra() > 0)
                .penalizeLong(Bench.ONE_HARD, (set, places) -> places.extra())
                .justifyWith((set, places, score) -> RuleJustification.of(
                        rule, "set " + set.name() + " must come off " + wanted + ", not off " + places.names()))
                .indictWith((set, places) -> List.copyOf(places.pieces()))
                .asConstraint(rule.name());
    }

    private BiConstraintStream<RunOfReel, Load> runs(ConstraintFactory factory) {
        return streams(factory).runs;
    }

    private BiConstraintStream<ReelOnRack, Skipped> reels(ConstraintFactory factory) {
        return streams(factory).reels;
    }

    /** Rules that look at the same runs or reels hang on one stream, so that the solver keeps their sums once. */
    private Streams streams(ConstraintFactory factory) {
        Streams streams = shared;
        if (streams == null || streams.factory != factory) {
            UniConstraintStream<PieceToCut> planned = factory.forEach(PieceToCut.class);
            streams = new Streams(
                    factory,
                    planned.groupBy(PieceToCut::plannedRun, new Load.Collector()),
                    planned.groupBy(piece -> piece.plannedRun().reel(), new Skipped.Collector()));
            shared = streams;
        }
        return streams;
    }

    private record Streams(
            ConstraintFactory factory,
            BiConstraintStream<RunOfReel, Load> runs,
            BiConstraintStream<ReelOnRack, Skipped> reels) {}

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
