package bitterend.packing.explain;

import bitterend.demand.Piece;
import bitterend.measure.Sentence;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.RunId;
import bitterend.packing.WantedRope;
import bitterend.packing.bench.RackState;
import bitterend.packing.bench.RopeToCount;
import bitterend.packing.bench.Takers;
import bitterend.packing.bench.Workbench;
import bitterend.packing.explain.PieceAnswer.Elsewhere;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.List;

/** What would bring a piece that stands alone into the plan. */
final class Help {
    private static final int SHOWN = 5;

    private final PackingProblem problem;
    private final Workbench bench;
    private final RackState rack;
    private final Piece piece;
    private final Eligibility rules;
    private final Takers takers;

    Help(Workbench bench, RackState rack, Piece piece) {
        this.problem = bench.problem();
        this.bench = bench;
        this.rack = rack;
        this.piece = piece;
        rules = new Eligibility(problem);
        takers = new Takers(bench, rack);
    }

    /** Bars that stand alone, work that could give way, and rope to receive. */
    List<Reason> with(List<Elsewhere> elsewhere) {
        List<Reason> help = new ArrayList<>();
        for (Elsewhere other : elsewhere) {
            if (other.bars().size() == 1
                    && Rule.toSettle().contains(other.bars().get(0).rule())) {
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
        WantedRope wanted = new WantedRope(problem, piece);
        new RopeToCount(bench, rack).before(wanted).ifPresent(told -> shown.add(new Reason(Rule.CLEAR_OF_FLAWS, told)));
        shown.add(new Reason(Rule.PLANNED, wanted.receive()));
        return shown;
    }

    /** The reels on order that would do. */
    List<Reason> onOrder() {
        return new RopeToCome(bench, rack).takes(piece.id(), List.of(piece));
    }

    /** The least urgent pieces of a run that would make room by waiting. */
    private void givingWay(Reel reel, Run run, List<Reason> help) {
        RunId id = new RunId(reel.id(), run.index());
        int number = bench.numberOf(id);
        long cut = piece.lengthOn(reel.rope()).orElseThrow().mm();
        if (rules.fits(piece, reel, run).isEmpty() && cut > rack.free(number)) {
            takers.whoMightWait(piece, new int[] {number})
                    .ifPresent(others -> help.add(new Reason(
                            Rule.FITS_THE_RUN, "on " + id + " there would be room if " + others + " waited")));
        }
    }
}
