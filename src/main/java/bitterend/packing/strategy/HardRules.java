package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.measure.Length;
import bitterend.packing.Eligibility;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The hard rules asked of a whole packing, before it may take the place of another: every piece and run is there, every
 * piece may come off its reel, every run holds what is cut from it, every set is whole and lies together. The checker asks
 * again, by code of its own, when the plan is finished.
 */
final class HardRules {
    private final Map<String, Piece> pieces = new HashMap<>();
    private final Map<String, Reel> reels = new HashMap<>();
    private final Map<String, List<Run>> runs = new HashMap<>();
    private final Map<String, List<Piece>> sets = new HashMap<>();
    private final PackingProblem problem;
    private final Eligibility eligibility;

    HardRules(PackingProblem problem) {
        this.problem = problem;
        eligibility = new Eligibility(problem);
        problem.reels().forEach(reel -> reels.put(reel.id(), reel));
        for (Piece piece : problem.pieces()) {
            pieces.put(piece.id(), piece);
            if (piece.isMatched()) {
                sets.computeIfAbsent(piece.matching().set(), any -> new ArrayList<>())
                        .add(piece);
            }
        }
    }

    /** What a packing breaks first, in words; empty for a sound one. */
    Optional<String> brokenBy(Packing packing) {
        Map<RunId, RunLoad> loads = new HashMap<>();
        for (Map.Entry<String, RunId> place : packing.places().entrySet()) {
            Piece piece = pieces.get(place.getKey());
            Reel reel = reels.get(place.getValue().reel());
            if (piece == null
                    || reel == null
                    || place.getValue().run() < 1
                    || place.getValue().run() > runsOf(reel).size()) {
                return Optional.of(place.getKey() + " on " + place.getValue() + ": one of them is not there");
            }
            Optional<String> reason = eligibility.against(piece, reel).map(against -> against.sentence()
                    .exact());
            if (reason.isPresent()) {
                return reason;
            }
            Length cut = piece.lengthOn(reel.rope()).orElseThrow();
            loads.merge(place.getValue(), RunLoad.NONE.plus(cut), (old, one) -> old.plus(cut));
        }
        return overfull(loads).or(() -> torn(packing));
    }

    private Optional<String> overfull(Map<RunId, RunLoad> loads) {
        return loads.entrySet().stream()
                .filter(entry -> !fits(entry.getKey(), entry.getValue()))
                .findFirst()
                .map(entry -> entry.getKey() + " would have to give more than it has");
    }

    private boolean fits(RunId run, RunLoad load) {
        Reel reel = reels.get(run.reel());
        return reel != null
                && load.fits(
                        runsOf(reel).get(run.run() - 1).length(),
                        problem.ropeOn(reel).cutting().loss());
    }

    private List<Run> runsOf(Reel reel) {
        return runs.computeIfAbsent(reel.id(), id -> reel.runs());
    }

    /** A set that is planned in part, or lies in two places. */
    private Optional<String> torn(Packing packing) {
        for (Map.Entry<String, List<Piece>> set : sets.entrySet()) {
            boolean toTheReel =
                    set.getValue().stream().anyMatch(piece -> piece.matching().bond() == Bond.ONE_REEL);
            Set<String> holders = new HashSet<>();
            int planned = 0;
            for (Piece piece : set.getValue()) {
                Reel reel = packing.placeOf(piece.id())
                        .map(place -> reels.get(place.reel()))
                        .orElse(null);
                if (reel != null) {
                    planned++;
                    holders.add(PlanPrice.holderOf(toTheReel ? Bond.ONE_REEL : Bond.ONE_LOT, reel));
                }
            }
            if (holders.size() > 1 || (planned > 0 && planned < set.getValue().size())) {
                return Optional.of("set " + set.getKey() + " is not whole in one place");
            }
        }
        return Optional.empty();
    }
}
