package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.packing.patterns.Draw;
import bitterend.packing.patterns.DualProof;
import bitterend.packing.patterns.PatternPlan;
import bitterend.packing.patterns.PatternProblem;
import bitterend.packing.patterns.Take;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A day in the numbers that our pattern engine is given, and the way back, for solvers that know nothing of rope. */
public final class PeerDay {
    private static final DualProof NOTHING = new DualProof(1, List.of(), 0, 0, 0, 0);

    private final PatternBridge bridge;
    private final PatternProblem patterns;

    /** The day of a problem without sets, of which everything can be cut. */
    public PeerDay(PackingProblem problem) {
        bridge = new PatternBridge(problem);
        patterns = bridge.patterns();
    }

    /** Items and kinds of reels. */
    public PatternProblem patterns() {
        return patterns;
    }

    /** The places of the pieces by these draws. */
    public Packing packing(List<Draw> draws) {
        return new Handout(bridge, new PatternPlan(draws, List.of(), 0, 0, 0, 0, NOTHING, NOTHING, Optional.empty(), 0))
                .packing();
    }

    /** The draws of a packing. */
    public List<Draw> draws(Packing packing) {
        Map<String, Map<Place, Integer>> reels = new TreeMap<>();
        for (int item = 0; item < bridge.kinds().size(); item++) {
            for (Piece piece : bridge.kinds().get(item)) {
                RunId run = packing.placeOf(piece.id()).orElseThrow();
                reels.computeIfAbsent(run.reel(), reel -> new TreeMap<>())
                        .merge(new Place(run.run() - 1, item), 1, Integer::sum);
            }
        }
        Map<String, Integer> kinds = kinds();
        List<Draw> draws = new ArrayList<>();
        reels.forEach((reel, takes) -> draws.add(new Draw(
                kinds.getOrDefault(reel, -1),
                1,
                takes.entrySet().stream()
                        .map(take -> new Take(take.getKey().run(), take.getKey().item(), take.getValue()))
                        .toList())));
        return draws;
    }

    private Map<String, Integer> kinds() {
        Map<String, Integer> kinds = new HashMap<>();
        for (int kind = 0; kind < bridge.reels().size(); kind++) {
            for (Reel reel : bridge.reels().get(kind)) {
                kinds.put(reel.id(), kind);
            }
        }
        return kinds;
    }

    private record Place(int run, int item) implements Comparable<Place> {
        @Override
        public int compareTo(Place other) {
            int byRun = Integer.compare(run, other.run);
            return byRun == 0 ? Integer.compare(item, other.item) : byRun;
        }
    }
}
