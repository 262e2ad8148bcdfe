package bitterend.packing.explain;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.RunId;
import bitterend.packing.Urgency;
import bitterend.packing.Words;
import bitterend.packing.bench.RackState;
import bitterend.packing.bench.Workbench;
import bitterend.packing.explain.PieceAnswer.Elsewhere;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What would bring a piece that stands alone into the plan. */
final class Help {
    private static final int SHOWN = 5;

    private final PackingProblem problem;
    private final Workbench bench;
    private final RackState rack;
    private final Piece piece;
    private final Eligibility rules;
    private final Urgency urgency;

    Help(Workbench bench, RackState rack, Piece piece) {
        this.problem = bench.problem();
        this.bench = bench;
        this.rack = rack;
        this.piece = piece;
        rules = new Eligibility(problem);
        urgency = new Urgency(problem);
    }

    /** Bars that stand alone, work that could give way, and rope to receive. */
    List<Reason> with(List<Elsewhere> elsewhere) {
        List<Reason> help = new ArrayList<>();
        for (Elsewhere other : elsewhere) {
            if (other.bars().size() == 1 && canBeSettled(other.bars().get(0).rule())) {
                Reason bar = other.bars().get(0);
                help.add(new Reason(
                        bar.rule(),
                        Sentence.of(other.run() + " would take it if this were settled: ")
                                .and(bar.sentence())));
            }
        }
        for (Reel reel : problem.reels()) {
            if (rules.allows(piece, reel)) {
                reel.runs().forEach(run -> givingWay(reel, run, help));
            }
        }
        List<Reason> shown = new ArrayList<>(help.subList(0, Math.min(SHOWN, help.size())));
        shown.addAll(onOrder());
        shown.add(new Reason(
                Rule.PLANNED,
                Sentence.of("receive at least ")
                        .and(piece.cut())
                        .and(" of " + piece.orderedRope() + " in one length"
                                + Words.withCertificate(piece.certificate()))));
        return shown;
    }

    /** The reels on order that would do. */
    List<Reason> onOrder() {
        return new RopeToCome(bench, rack).takes(piece.id(), List.of(piece));
    }

    /** A run that is too short, that holds another rope, or that is not here yet, is settled by nobody. */
    private static boolean canBeSettled(Rule rule) {
        return rule != Rule.FITS_THE_RUN && rule != Rule.SAME_ROPE && rule != Rule.COMES_IN_TIME;
    }

    /** The fewest pieces of a run, the least urgent of them, that would make room. */
    private void givingWay(Reel reel, Run run, List<Reason> help) {
        if (rules.fits(piece, reel, run).isPresent()) {
            return;
        }
        RunId id = new RunId(reel.id(), run.index());
        int number = bench.numberOf(id);
        Length missing = piece.lengthOn(reel.rope()).orElseThrow().minus(new Length(rack.free(number)));
        List<Piece> there = rack.onRun(number).stream()
                .map(bench::piece)
                .sorted(Comparator.comparing((Piece other) -> urgency.of(other)).thenComparing(Piece::id))
                .toList();
        there.stream()
                .filter(other -> !missing.isLongerThan(taken(other, reel)))
                .findFirst()
                .ifPresent(other -> help.add(new Reason(
                        Rule.FITS_THE_RUN, "on " + id + " there would be room if " + other.id() + " waited")));
    }

    private Length taken(Piece other, Reel reel) {
        return other.lengthOn(reel.rope())
                .orElseThrow()
                .plus(problem.ropeOn(reel).cutting().loss());
    }
}
