package bitterend.packing.search;

import bitterend.packing.model.Bench;
import bitterend.packing.model.PieceToCut;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/**
 * The moves of the bench, drawn at random: of a hundred draws so many changes, swaps and so on. Only moves that keep every
 * hard rule are handed out; they cost a fraction of what the solver needs to weigh one.
 */
public final class BenchMoves implements MoveIteratorFactory<Bench, PlaceMove> {
    /** What a profile may set, and what it is when the profile does not; see the setters. */
    static final Map<String, Integer> USUAL =
            Map.of("change", 34, "swap", 38, "oneForTwo", 20, "repack", 6, "moveSet", 2, "nodes", 100);

    /** So many draws for each move are fine; a bench on which more come to nothing has hardly anything left to move. */
    private static final int DRAWS_PER_MOVE = 100;

    private static final int PATIENCE = 20_000;

    private int change = usual("change");
    private int swap = usual("swap");
    private int oneForTwo = usual("oneForTwo");
    private int repack = usual("repack");
    private int moveSet = usual("moveSet");
    private int nodes = usual("nodes");
    private List<MoveKind> kinds = List.of();
    private List<PieceToCut> movable = List.of();
    private long draws;
    private long moves;

    private static int usual(String property) {
        return USUAL.getOrDefault(property, 0);
    }

    /** How often one piece goes to another run. */
    public void setChange(int weight) {
        change = weight;
    }

    /** How often two pieces change places. */
    public void setSwap(int weight) {
        swap = weight;
    }

    /** How often one piece changes places with two. */
    public void setOneForTwo(int weight) {
        oneForTwo = weight;
    }

    /** How often some runs are emptied and filled again. */
    public void setRepack(int weight) {
        repack = weight;
    }

    /** How often a matched set moves whole; only where there are sets. */
    public void setMoveSet(int weight) {
        moveSet = weight;
    }

    /** How long the filling of one run may be searched for, in nodes. */
    public void setNodes(int limit) {
        nodes = limit;
    }

    @Override
    public void phaseStarted(ScoreDirector<Bench> director) {
        movable = director.getWorkingSolution().pieces().stream()
                .filter(piece -> !piece.isFixed() && !piece.getHomes().isEmpty())
                .toList();
        boolean sets = movable.stream().anyMatch(PieceToCut::isMatched);
        List<MoveKind> all = new ArrayList<>();
        add(all, change, new Change());
        add(all, swap, new Swap());
        add(all, oneForTwo, new OneForTwo());
        add(all, repack, new Repack(nodes));
        add(all, sets ? moveSet : 0, new MoveSet(movable, nodes));
        kinds = all;
        draws = 0;
        moves = 0;
    }

    private static void add(List<MoveKind> all, int weight, MoveKind kind) {
        for (int i = 0; i < weight; i++) {
            all.add(kind);
        }
    }

    @Override
    public long getSize(ScoreDirector<Bench> director) {
        return Math.max(1, (long) movable.size() * movable.size());
    }

    @Override
    public Iterator<PlaceMove> createOriginalMoveIterator(ScoreDirector<Bench> director) {
        throw new UnsupportedOperationException("moves of the bench are drawn at random");
    }

    @Override
    public Iterator<PlaceMove> createRandomMoveIterator(ScoreDirector<Bench> director, Random random) {
        return new Draws(director.getWorkingSolution(), random);
    }

    private final class Draws implements Iterator<PlaceMove> {
        private final Bench bench;
        private final Random random;
        private @Nullable Snapshot snapshot;
        private @Nullable PlaceMove next;

        Draws(Bench bench, Random random) {
            this.bench = bench;
            this.random = random;
        }

        @Override
        public boolean hasNext() {
            if (movable.isEmpty() || kinds.isEmpty()) {
                return false;
            }
            while (next == null && draws < PATIENCE + DRAWS_PER_MOVE * moves) {
                draws++;
                PlaceMove move = kinds.get(random.nextInt(kinds.size())).draw(snapshot(), random);
                next = move != null && move.changesAnything() ? move : null;
            }
            return next != null;
        }

        @Override
        public PlaceMove next() {
            if (!hasNext()) {
                throw new NoSuchElementException();
            }
            PlaceMove move = java.util.Objects.requireNonNull(next);
            next = null;
            moves++;
            return move;
        }

        private Snapshot snapshot() {
            Snapshot now = snapshot;
            if (now == null) {
                now = new Snapshot(bench, movable);
                snapshot = now;
            }
            return now;
        }
    }
}
