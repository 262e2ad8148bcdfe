package bitterend.packing.loads;

import bitterend.demand.Piece;
import bitterend.measure.CommonDivisor;
import bitterend.measure.Length;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The reels that take any piece, and the size of every piece on each of them, with its cut; counted in cells. */
final class RackOfCells {
    /** Cells of a table times pieces of a day beyond which tables are too slow to be of use. */
    private static final long MOST_STATES = 60_000_000;

    private static final int MOST_CELLS = 400_000;

    final List<Reel> racked = new ArrayList<>();
    /** In mm, by the number of the reel; 0 where the piece may not come off it. */
    final Map<Piece, long[]> sizes = new LinkedHashMap<>();
    /** Millimetres of a cell. */
    final long cell;

    private final PackingProblem problem;

    RackOfCells(PackingProblem problem) {
        this.problem = problem;
        cell = measure();
    }

    /** The size of every piece with its cut on every reel that may serve it, and the divisor of all of them. */
    private long measure() {
        Eligibility rules = new Eligibility(problem);
        Map<Piece, Map<Reel, Long>> all = new LinkedHashMap<>();
        for (Piece piece : problem.pieces()) {
            Map<Reel, Long> on = new HashMap<>();
            for (Reel reel : problem.reels()) {
                Optional<Length> cut = piece.lengthOn(reel.rope());
                if (cut.isPresent() && rules.allows(piece, reel) && fits(cut.get(), reel)) {
                    on.put(reel, cut.get().plus(lossOn(reel)).mm());
                }
            }
            all.put(piece, on);
        }
        problem.reels().stream()
                .filter(reel -> all.values().stream().anyMatch(on -> on.containsKey(reel)))
                .forEach(racked::add);
        long divisor = 0;
        for (Map.Entry<Piece, Map<Reel, Long>> entry : all.entrySet()) {
            long[] on = racked.stream()
                    .mapToLong(reel -> entry.getValue().getOrDefault(reel, 0L))
                    .toArray();
            for (long size : on) {
                divisor = CommonDivisor.of(divisor, size);
            }
            sizes.put(entry.getKey(), on);
        }
        return Math.max(1, divisor);
    }

    private static boolean fits(Length cut, Reel reel) {
        return reel.runs().stream().anyMatch(run -> !cut.isLongerThan(run.length()));
    }

    private Length lossOn(Reel reel) {
        return problem.ropeOn(reel).cutting().loss();
    }

    long room(Reel reel, Run run) {
        return run.length().plus(lossOn(reel)).mm() / cell;
    }

    boolean isTooLarge() {
        long room = racked.stream()
                .flatMap(reel -> reel.runs().stream().map(run -> room(reel, run)))
                .max(Long::compare)
                .orElse(0L);
        return room > MOST_CELLS || room * problem.pieces().size() > MOST_STATES;
    }

    Map<String, List<Integer>> lotsOf(List<Piece> pieces) {
        Map<String, List<Integer>> lots = new LinkedHashMap<>();
        for (int r = 0; r < racked.size(); r++) {
            int reel = r;
            if (pieces.stream().anyMatch(piece -> sizeOn(piece, reel) > 0)) {
                lots.computeIfAbsent(lotOf(r), any -> new ArrayList<>()).add(r);
            }
        }
        return lots;
    }

    private long sizeOn(Piece piece, int reel) {
        long[] on = sizes.get(piece);
        return on == null ? 0 : on[reel];
    }

    private String lotOf(int reel) {
        Reel there = racked.get(reel);
        return there.rope() + ", " + PlanPrice.lotOf(there);
    }
}
