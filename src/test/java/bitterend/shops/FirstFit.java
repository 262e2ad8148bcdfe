package bitterend.shops;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** The simplest sound packing: sets and pieces in turn, each into the first run that takes it. */
public final class FirstFit {
    private final PackingProblem problem;
    private final Bench bench;
    private final Map<RunId, Long> used = new HashMap<>();
    private final Map<String, RunId> places = new HashMap<>();

    private FirstFit(PackingProblem problem) {
        this.problem = problem;
        bench = new Bench(problem);
    }

    public static Packing of(PackingProblem problem) {
        FirstFit fit = new FirstFit(problem);
        fit.groups().forEach(fit::place);
        return new Packing(fit.places);
    }

    private Collection<List<Piece>> groups() {
        Map<String, List<Piece>> groups = new LinkedHashMap<>();
        for (Piece piece : problem.pieces()) {
            String name = piece.isMatched() ? "set " + piece.matching().set() : "piece " + piece.id();
            groups.computeIfAbsent(name, any -> new ArrayList<>()).add(piece);
        }
        return groups.values();
    }

    private void place(List<Piece> group) {
        for (Predicate<Reel> source : sources(group.get(0).matching().bond())) {
            if (place(group, source)) {
                return;
            }
        }
    }

    /** The sources that a group may come off, each of which keeps the bond. */
    private List<Predicate<Reel>> sources(Bond bond) {
        return switch (bond) {
            case NONE -> List.of(reel -> true);
            case ONE_REEL -> problem.reels().stream().map(FirstFit::only).toList();
            case ONE_LOT -> problem.reels().stream().map(FirstFit::sameLot).toList();
        };
    }

    private static Predicate<Reel> only(Reel one) {
        return reel -> reel.id().equals(one.id());
    }

    private static Predicate<Reel> sameLot(Reel one) {
        return reel -> reel.rope().equals(one.rope()) && Bench.lot(reel).equals(Bench.lot(one));
    }

    /** All pieces of the group off one source, or none. */
    private boolean place(List<Piece> group, Predicate<Reel> source) {
        List<Piece> placed = new ArrayList<>();
        for (Piece piece : group) {
            Optional<RunId> at = firstRun(piece, source);
            if (at.isEmpty()) {
                placed.forEach(this::takeBack);
                return false;
            }
            places.put(piece.id(), at.get());
            used.merge(at.get(), bench.need(piece, at.get()), Long::sum);
            placed.add(piece);
        }
        return true;
    }

    private void takeBack(Piece piece) {
        RunId at = places.remove(piece.id());
        if (at != null) {
            used.merge(at, -bench.need(piece, at), Long::sum);
        }
    }

    private Optional<RunId> firstRun(Piece piece, Predicate<Reel> source) {
        return bench.runs().stream()
                .filter(at -> source.test(bench.reel(at.reel())) && bench.allows(piece, bench.reel(at.reel())))
                .filter(at -> used.getOrDefault(at, 0L) + bench.need(piece, at) <= bench.room(at))
                .findFirst();
    }
}
