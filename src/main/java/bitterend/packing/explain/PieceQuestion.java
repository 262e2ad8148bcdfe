package bitterend.packing.explain;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.RunId;
import bitterend.packing.bench.RackState;
import bitterend.packing.bench.Workbench;
import bitterend.packing.explain.PieceAnswer.Elsewhere;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Tries one piece on every run of the rack. */
final class PieceQuestion {
    private static final Comparator<Elsewhere> CHEAPEST_FIRST = Comparator.comparing(
                    (Elsewhere other) -> other.bars().size())
            .thenComparing(Elsewhere::change)
            .thenComparing(Elsewhere::run);

    private final PackingProblem problem;
    private final Workbench bench;
    private final RackState rack;
    private final Piece piece;
    private final Eligibility rules;
    private final Optional<RunId> place;
    private final SetQuestion set;

    PieceQuestion(Workbench bench, RackState rack, Piece piece) {
        set = new SetQuestion(bench, rack, piece);
        this.problem = bench.problem();
        this.bench = bench;
        this.rack = rack;
        this.piece = piece;
        rules = new Eligibility(problem);
        place = rack.packing().placeOf(piece.id());
    }

    PieceAnswer answer() {
        List<Elsewhere> elsewhere = new ArrayList<>();
        for (Reel reel : problem.reels()) {
            for (Run run : reel.runs()) {
                RunId id = new RunId(reel.id(), run.index());
                if (!place.equals(Optional.of(id))) {
                    elsewhere.add(on(reel, run, id));
                }
            }
        }
        elsewhere.sort(CHEAPEST_FIRST);
        List<Reason> why = new ArrayList<>(piece.isMatched() ? List.of(set.told()) : List.of());
        why.addAll(place.isPresent() ? whyHere(place.get(), elsewhere) : whyNowhere(elsewhere));
        return new PieceAnswer(piece.id(), place.stream().toList(), why, elsewhere, help(elsewhere));
    }

    private List<Reason> help(List<Elsewhere> elsewhere) {
        if (place.isPresent()) {
            return List.of();
        }
        return piece.isMatched() ? set.help() : new Help(bench, rack, piece).with(elsewhere);
    }

    /** The reels on order that would do for it, or for all of its set, where it is not planned. */
    List<Reason> onOrder() {
        if (place.isPresent()) {
            return List.of();
        }
        return piece.isMatched() ? set.onOrder() : new Help(bench, rack, piece).onOrder();
    }

    private Elsewhere on(Reel reel, Run run, RunId id) {
        List<Reason> bars = bars(reel, run, id);
        return new Elsewhere(id, bars, bars.isEmpty() ? change(id) : Cost.ZERO);
    }

    /** What the plan would cost more with the piece on a run. */
    private Cost change(RunId run) {
        return new Cost(rack.changeMillis(bench.numberOf(piece.id()), bench.numberOf(run)));
    }

    /** Every rule that keeps the piece off a run, not only the first. */
    private List<Reason> bars(Reel reel, Run run, RunId id) {
        List<Reason> bars = new ArrayList<>(rules.all(piece, reel));
        if (bars.stream().noneMatch(bar -> bar.rule() == Rule.SAME_ROPE)) {
            Optional<Reason> tooShort = rules.fits(piece, reel, run);
            tooShort.or(() -> noRoom(reel, id)).ifPresent(bars::add);
            leavesItsSet(reel).ifPresent(bars::add);
            if (bars.isEmpty() && piece.isMatched() && place.isEmpty()) {
                set.against(reel).ifPresent(bars::add);
            }
        }
        return bars;
    }

    private Optional<Reason> noRoom(Reel reel, RunId id) {
        Length cut = piece.lengthOn(reel.rope()).orElse(piece.cut());
        Length room = new Length(rack.free(bench.numberOf(id)));
        if (!cut.isLongerThan(room)) {
            return Optional.empty();
        }
        return Optional.of(new Reason(
                Rule.FITS_THE_RUN,
                Sentence.of(piece.id() + " takes ")
                        .and(cut)
                        .and("; beside the other work " + id + " has ")
                        .and(Length.max(Length.ZERO, room))));
    }

    /** A piece of a set that is planned stays with its set. */
    private Optional<Reason> leavesItsSet(Reel reel) {
        if (!piece.isMatched() || place.isEmpty()) {
            return Optional.empty();
        }
        Reel now = problem.reels().stream()
                .filter(other -> other.id().equals(place.get().reel()))
                .findFirst()
                .orElseThrow();
        Bond bond = piece.matching().bond();
        return PlanPrice.holderOf(bond, now).equals(PlanPrice.holderOf(bond, reel))
                ? Optional.empty()
                : Optional.of(new Reason(
                        bond == Bond.ONE_REEL ? Rule.ONE_REEL : Rule.ONE_LOT,
                        "set " + piece.matching().set() + " comes off "
                                + (bond == Bond.ONE_REEL ? now.id() : PlanPrice.lotOf(now))
                                + "; " + piece.id() + " cannot leave it alone"));
    }

    private List<Reason> whyHere(RunId here, List<Elsewhere> elsewhere) {
        List<Reason> why = new ArrayList<>();
        problem.pins().stream()
                .filter(pin -> pin.piece().equals(piece.id()))
                .findFirst()
                .map(pin -> pin.isIssued()
                        ? new Reason(
                                Rule.ISSUED, "reel " + here.reel() + " is issued on plan " + pin.issued() + " with it")
                        : new Reason(Rule.PINNED, piece.id() + " is pinned to " + here.reel()))
                .ifPresent(why::add);
        List<Elsewhere> open = elsewhere.stream().filter(Elsewhere::isOpen).toList();
        if (open.isEmpty()) {
            why.add(new Reason(Rule.PLANNED, "no other run is open to " + piece.id() + " with all else as planned"));
            return why;
        }
        Elsewhere next = open.get(0);
        int order = next.change().compareTo(Cost.ZERO);
        String sentence = order > 0
                ? here + " is the cheapest place for it with all else as planned; the next is " + next.run()
                : order == 0
                        ? next.run() + " would cost the same"
                        : next.run() + " would be cheaper for this piece alone";
        why.add(new Reason(Rule.STOCK_VALUE, sentence));
        return why;
    }

    private List<Reason> whyNowhere(List<Elsewhere> elsewhere) {
        List<Reason> why = new ArrayList<>();
        if (elsewhere.stream().anyMatch(Elsewhere::isOpen)) {
            why.add(
                    piece.isMatched()
                            ? new Reason(
                                    Rule.SET_WHOLE,
                                    "set " + piece.matching().set() + " could not be planned whole, so none of it is")
                            : new Reason(
                                    Rule.PLANNED, "there is room for " + piece.id() + " that the plan does not use"));
            return why;
        }
        for (Elsewhere other : elsewhere) {
            if (other.bars().stream().anyMatch(bar -> bar.rule() == Rule.SAME_ROPE)) {
                continue;
            }
            other.bars().stream()
                    .filter(bar -> why.stream().noneMatch(known -> known.equals(bar)))
                    .findFirst()
                    .ifPresent(why::add);
        }
        if (why.isEmpty()) {
            why.add(new Reason(Rule.SAME_ROPE, "no reel of " + piece.orderedRope() + " is in stock"));
        }
        return why;
    }
}
