package bitterend.packing.explain;

import bitterend.demand.Piece;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.bench.RackState;
import bitterend.packing.bench.Workbench;
import bitterend.stock.Reel;
import java.util.List;
import java.util.Optional;

/** Answers questions about one packing of a day, in true money and by the hard rules themselves; it asks no engine. */
public final class Explanation {
    private final PackingProblem problem;
    private final Workbench bench;
    private final RackState rack;

    public Explanation(PackingProblem problem, Packing packing) {
        this.problem = problem;
        bench = new Workbench(problem);
        rack = RackState.of(bench, packing);
    }

    /** Why a piece is where it is or is not planned, and what it would cost on every other run; none for an unknown id. */
    public Optional<PieceAnswer> piece(String id) {
        return problem.pieces().stream()
                .filter(piece -> piece.id().equals(id))
                .findFirst()
                .map(this::answer);
    }

    /** The reels on order that would do for a piece, or for all of its set; none for an unknown id. */
    public List<Reason> onOrder(String id) {
        return problem.pieces().stream()
                .filter(piece -> piece.id().equals(id))
                .flatMap(piece -> new PieceQuestion(bench, rack, piece).onOrder().stream())
                .toList();
    }

    private PieceAnswer answer(Piece piece) {
        return new PieceQuestion(bench, rack, piece).answer();
    }

    /** What is cut from a reel and what it costs by rule; none for an unknown id. */
    public Optional<ReelAnswer> reel(String id) {
        return problem.reels().stream()
                .filter(reel -> reel.id().equals(id))
                .findFirst()
                .map(this::answer);
    }

    private ReelAnswer answer(Reel reel) {
        return new ReelQuestion(bench, rack, reel).answer();
    }
}
