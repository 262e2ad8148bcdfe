package bitterend.packing.search;

import bitterend.packing.SubsetFill;
import bitterend.packing.Undone;
import bitterend.packing.model.MatchedSet;
import bitterend.packing.model.PieceToCut;
import bitterend.packing.model.RunOfReel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Some runs emptied of what may be moved, and filled again one by one from a pool of pieces. */
final class Refilling {
    private final Map<RunOfReel, Long> rooms = new LinkedHashMap<>();
    private final List<PieceToCut> pool = new ArrayList<>();
    private final List<PieceToCut> placed = new ArrayList<>();
    private final List<RunOfReel> places = new ArrayList<>();
    private final List<PieceToCut> dropped = new ArrayList<>();
    private final int nodes;

    /** @param nodes how long the filling of one run may be searched for */
    Refilling(int nodes) {
        this.nodes = nodes;
    }

    /** Empties a run into the pool; a run already emptied stays so. */
    void empty(Snapshot bench, RunOfReel run) {
        if (rooms.containsKey(run)) {
            return;
        }
        long room = bench.free(run);
        for (int i = 0; i < bench.count(run); i++) {
            PieceToCut piece = bench.pieceOn(run, i);
            room += piece.sizeOn(run);
            pool.add(piece);
        }
        rooms.put(run, room);
    }

    void add(PieceToCut unplanned) {
        pool.add(unplanned);
    }

    List<PieceToCut> pool() {
        return pool;
    }

    /** Takes a set out of the pool and out of the plan. */
    void drop(MatchedSet set) {
        pool.stream().filter(piece -> isOf(piece, set)).forEach(dropped::add);
        pool.removeAll(dropped);
    }

    /** Takes pieces of a set out of the pool and puts them on the first runs with room; says whether all found one. */
    boolean placeSet(MatchedSet set, String bond, List<RunOfReel> runs) {
        List<PieceToCut> mates = pool.stream().filter(piece -> isOf(piece, set)).toList();
        pool.removeAll(mates);
        for (PieceToCut mate : mates) {
            RunOfReel home = null;
            for (RunOfReel run : runs) {
                boolean open = set.bondOf(run).equals(bond) && mate.mayComeOff(run) && mate.sizeOn(run) <= room(run);
                home = home == null && open ? run : home;
            }
            if (home == null) {
                return false;
            }
            place(mate, home);
        }
        return true;
    }

    private static boolean isOf(PieceToCut piece, MatchedSet set) {
        return piece.isMatched() && piece.matchedSet().equals(set);
    }

    /** Fills a run as full as can be from the pool, trying pieces in the order of the pool. */
    void fill(RunOfReel run) {
        List<PieceToCut> eligible = new ArrayList<>();
        long room = room(run);
        for (PieceToCut piece : pool) {
            if (Snapshot.suits(piece, run) && piece.sizeOn(run) <= room) {
                eligible.add(piece);
            }
        }
        long[] sizes = eligible.stream().mapToLong(piece -> piece.sizeOn(run)).toArray();
        boolean[] chosen = SubsetFill.of(sizes, room, nodes);
        for (int i = 0; i < chosen.length; i++) {
            if (chosen[i]) {
                pool.remove(eligible.get(i));
                place(eligible.get(i), run);
            }
        }
    }

    private void place(PieceToCut piece, RunOfReel run) {
        placed.add(piece);
        places.add(run);
        rooms.merge(run, -piece.sizeOn(run), Long::sum);
    }

    private long room(RunOfReel run) {
        return rooms.getOrDefault(run, 0L);
    }

    private static Undone work(List<PieceToCut> pieces) {
        return pieces.stream()
                .map(piece -> Undone.of(piece.urgency(), piece.weight()))
                .reduce(Undone.NONE, Undone::plus);
    }

    /**
     * The move that brings this about; null when it would leave more undone than before, or break up a set or a
     * pin.
     */
    @Nullable
    PlaceMove move() {
        Undone lost = work(dropped);
        for (PieceToCut piece : pool) {
            if (piece.isPlanned() && !Snapshot.maySpare(piece)) {
                return null;
            }
            lost = piece.isPlanned() ? lost.plus(Undone.of(piece.urgency(), piece.weight())) : lost;
        }
        Undone gained = work(placed.stream().filter(piece -> !piece.isPlanned()).toList());
        if (gained.isLessThan(lost)) {
            return null;
        }
        List<PieceToCut> all = new ArrayList<>(placed);
        all.addAll(pool);
        all.addAll(dropped);
        @Nullable RunOfReel[] runs = places.toArray(new @Nullable RunOfReel[all.size()]);
        return new PlaceMove(all.toArray(PieceToCut[]::new), runs);
    }
}
