package bitterend.packing.search;

import bitterend.packing.model.MatchedSet;
import bitterend.packing.model.PieceToCut;
import bitterend.packing.model.RunOfReel;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Moves a matched set whole to another lot or reel, or into the plan: empties some runs there, puts the set on them, and
 * fills what is left with the pieces that had to give way. Where single pieces wait for rope, the set now and then gives
 * way to them.
 */
final class MoveSet implements MoveKind {
    private static final int RUNS = 3;

    /** Where single pieces wait, one draw of so many lets a set give way to them, to so many at most. */
    private static final int DROPS = 3;

    private static final int TAKEN_IN = 12;

    private final List<MatchedSet> sets;
    private final Map<MatchedSet, List<PieceToCut>> mates = new LinkedHashMap<>();
    private final int nodes;

    MoveSet(List<PieceToCut> movable, int nodes) {
        this.nodes = nodes;
        for (PieceToCut piece : movable) {
            if (piece.isMatched()) {
                mates.computeIfAbsent(piece.matchedSet(), set -> new ArrayList<>())
                        .add(piece);
            }
        }
        mates.entrySet()
                .removeIf(entry -> entry.getValue().size() < entry.getKey().size());
        sets = List.copyOf(mates.keySet());
    }

    @Override
    public @Nullable PlaceMove draw(Snapshot bench, Random random) {
        if (sets.isEmpty()) {
            return null;
        }
        MatchedSet set = sets.get(random.nextInt(sets.size()));
        List<PieceToCut> pieces = mates.getOrDefault(set, List.of());
        boolean isPlanned = pieces.get(0).getRun() != null;
        if (isPlanned && !bench.unplanned().isEmpty() && random.nextInt(DROPS) == 0) {
            return drop(set, pieces, bench, random);
        }
        RunOfReel anchor = bench.anyHome(pieces.get(random.nextInt(pieces.size())), random);
        String bond = set.bondOf(anchor);
        Refilling refilling = new Refilling(nodes);
        List<RunOfReel> targets = targets(pieces, set, bond, anchor, random);
        targets.forEach(run -> refilling.empty(bench, run));
        Set<RunOfReel> left = new LinkedHashSet<>();
        for (PieceToCut piece : pieces) {
            RunOfReel run = piece.getRun();
            if (run == null) {
                refilling.add(piece);
            } else if (!targets.contains(run)) {
                left.add(run);
            }
        }
        left.forEach(run -> refilling.empty(bench, run));
        refilling
                .pool()
                .sort(Comparator.comparingLong((PieceToCut piece) -> piece.sizeOn(anchor))
                        .reversed());
        if (!refilling.placeSet(set, bond, targets)) {
            return null;
        }
        targets.forEach(refilling::fill);
        left.forEach(refilling::fill);
        return refilling.move();
    }

    /** Takes the set out of the plan and fills its runs with what lies there besides and single pieces that wait. */
    private @Nullable PlaceMove drop(MatchedSet set, List<PieceToCut> pieces, Snapshot bench, Random random) {
        Refilling refilling = new Refilling(nodes);
        Set<RunOfReel> runs = new LinkedHashSet<>();
        for (PieceToCut piece : pieces) {
            RunOfReel run = piece.getRun();
            if (run != null && runs.add(run)) {
                refilling.empty(bench, run);
            }
        }
        refilling.drop(set);
        List<PieceToCut> waiting = new ArrayList<>(bench.unplanned());
        waiting.removeIf(PieceToCut::isMatched);
        Collections.shuffle(waiting, random);
        waiting.subList(0, Math.min(TAKEN_IN, waiting.size())).forEach(refilling::add);
        refilling.pool().sort(Comparator.comparingInt(PieceToCut::urgency));
        runs.forEach(refilling::fill);
        return refilling.move();
    }

    /** Some runs that share what the set must share. */
    private static List<RunOfReel> targets(
            List<PieceToCut> pieces, MatchedSet set, String bond, RunOfReel anchor, Random random) {
        List<RunOfReel> same = new ArrayList<>();
        for (RunOfReel run : pieces.get(0).getHomes()) {
            if (run != anchor && set.bondOf(run).equals(bond)) {
                same.add(run);
            }
        }
        Collections.shuffle(same, random);
        List<RunOfReel> targets = new ArrayList<>(List.of(anchor));
        targets.addAll(same.subList(0, Math.min(same.size(), random.nextInt(RUNS))));
        return targets;
    }
}
