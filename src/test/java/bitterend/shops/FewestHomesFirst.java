package bitterend.shops;

import bitterend.demand.Piece;
import bitterend.packing.Eligibility;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.packing.WorkingDays;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/** The cutting order within a run, by trying every run of the rack for every piece. */
final class FewestHomesFirst {
    private final PackingProblem problem;
    private final Packing packing;
    private final Eligibility rules;

    FewestHomesFirst(PackingProblem problem, Packing packing) {
        this.problem = problem;
        this.packing = packing;
        rules = new Eligibility(problem);
    }

    List<Piece> of(List<Piece> run, String reel) {
        return run.stream()
                .sorted(Comparator.comparingLong((Piece piece) -> together(run, piece).stream()
                                .mapToLong(each -> homes(each, reel))
                                .min()
                                .orElseThrow())
                        .thenComparing(piece -> together(run, piece).stream()
                                .map(each -> new WorkingDays(problem.calendar()).cutBy(each))
                                .min(LocalDate::compareTo)
                                .orElseThrow())
                        .thenComparing(piece -> together(run, piece).get(0).id()))
                .toList();
    }

    private static List<Piece> together(List<Piece> run, Piece piece) {
        return run.stream()
                .filter(other -> piece.isMatched()
                        ? other.matching().set().equals(piece.matching().set())
                        : other.equals(piece))
                .toList();
    }

    private long homes(Piece piece, String ownReel) {
        return problem.reels().stream()
                .filter(reel ->
                        !reel.id().equals(ownReel) && rules.against(piece, reel).isEmpty())
                .mapToLong(reel -> reel.runs().stream()
                        .filter(run -> takes(reel, run, piece))
                        .count())
                .sum();
    }

    private boolean takes(Reel reel, Run run, Piece piece) {
        RunId here = new RunId(reel.id(), run.index());
        long loss = problem.ropeOn(reel).cutting().loss().mm();
        long taken = problem.pieces().stream()
                .filter(other -> here.equals(packing.places().get(other.id())))
                .mapToLong(
                        other -> other.lengthOn(reel.rope()).orElse(other.cut()).mm() + loss)
                .sum();
        return taken + piece.lengthOn(reel.rope()).orElseThrow().mm()
                <= run.length().mm();
    }
}
