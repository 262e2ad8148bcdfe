package bitterend.packing.loads;

import bitterend.demand.Piece;
import bitterend.packing.Packing;
import bitterend.packing.RunId;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Draws become places of pieces, and the other way round. */
final class DrawsToPacking {
    private DrawsToPacking() {}

    /** Hands out the pieces; a piece that is cut too often is left out, a set that is not whole too. */
    static Packing packing(LoadModel model, List<Pattern> draws) {
        Map<String, RunId> places = new HashMap<>();
        List<ArrayDeque<Piece>> open = new ArrayList<>();
        for (Item item : model.items) {
            open.add(new ArrayDeque<>(item.pieces));
        }
        for (Pattern draw : draws) {
            for (int t = 0; t < draw.item.length; t++) {
                for (int q = 0; q < draw.count[t] && !open.get(draw.item[t]).isEmpty(); q++) {
                    Piece piece = open.get(draw.item[t]).removeFirst();
                    places.put(piece.id(), new RunId(model.reels[draw.reel].id, draw.run[t] + 1));
                }
            }
        }
        for (SetOfPieces set : model.sets) {
            boolean whole = set.items.stream()
                    .flatMap(item -> item.pieces.stream())
                    .allMatch(piece -> places.containsKey(piece.id()));
            if (!whole) {
                set.items.forEach(item -> item.pieces.forEach(piece -> places.remove(piece.id())));
            }
        }
        return new Packing(places);
    }

    /** The draws of a plan. */
    static List<Pattern> draws(LoadModel model, Packing packing) {
        Map<String, ReelOfRuns> reels = new HashMap<>();
        for (ReelOfRuns reel : model.reels) {
            reels.put(reel.id, reel);
        }
        Map<ReelOfRuns, Map<List<Integer>, Integer>> counts = new LinkedHashMap<>();
        for (Item item : model.items) {
            for (Piece piece : item.pieces) {
                RunId place = packing.places().get(piece.id());
                ReelOfRuns reel = place == null ? null : reels.get(place.reel());
                if (reel != null && place != null) {
                    counts.computeIfAbsent(reel, any -> new LinkedHashMap<>())
                            .merge(List.of(place.run() - 1, item.index), 1, Integer::sum);
                }
            }
        }
        List<Pattern> draws = new ArrayList<>();
        counts.forEach((reel, takes) -> draws.add(draw(model, reel, takes)));
        return draws;
    }

    /** A draw from pairs of run and item with their numbers. */
    static Pattern draw(LoadModel model, ReelOfRuns reel, Map<List<Integer>, Integer> takes) {
        int[] loads = new int[reel.runs.length];
        List<int[]> list = new ArrayList<>();
        takes.forEach((at, count) -> {
            loads[at.get(0)] += model.items[at.get(1)].cells[reel.index] * count;
            list.add(new int[] {at.get(0), at.get(1), count});
        });
        return Pattern.of(reel, loads, list);
    }
}
