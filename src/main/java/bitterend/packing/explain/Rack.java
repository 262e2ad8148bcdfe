package bitterend.packing.explain;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The reels with what a packing cuts from them. */
final class Rack {
    private final PackingProblem problem;
    private final Packing packing;
    private final PlanPrice prices;
    private final Map<String, RunLoad[]> loads;
    private final Cost cost;

    Rack(PackingProblem problem, Packing packing) {
        this.problem = problem;
        this.packing = packing;
        prices = new PlanPrice(problem);
        loads = prices.loads(packing);
        cost = prices.of(packing);
    }

    Packing packing() {
        return packing;
    }

    PlanPrice prices() {
        return prices;
    }

    /** What is cut from a run. */
    RunLoad load(Reel reel, Run run) {
        RunLoad[] all = loads.get(reel.id());
        return all == null ? RunLoad.NONE : all[run.index() - 1];
    }

    boolean isTouched(Reel reel) {
        return loads.containsKey(reel.id());
    }

    /** The longest piece that still fits a run; negative when not even a cut loss is left. */
    Length room(Reel reel, Run run) {
        RunLoad load = load(reel, run);
        Length loss = problem.ropeOn(reel).cutting().loss();
        return run.length().minus(load.sum()).minus(loss.times(load.pieces()));
    }

    /** What the plan would cost more with a piece on a run. */
    Cost change(Piece piece, RunId run) {
        Map<String, RunId> places = new HashMap<>(packing.places());
        places.put(piece.id(), run);
        return prices.of(new Packing(places)).minus(cost);
    }

    /** The pieces on a run, as the problem lists them. */
    List<Piece> piecesOn(RunId run) {
        return problem.pieces().stream()
                .filter(piece -> run.equals(packing.places().get(piece.id())))
                .toList();
    }
}
