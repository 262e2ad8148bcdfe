package bitterend.shops;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.packing.check.UndoneWork;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * What anybody could do by hand where rope is short: take jobs in some order, a set as one, and put each on the first run,
 * or the fullest, that still takes it.
 */
public final class TrivialPass {
    private final PackingProblem problem;
    private final Bench bench;
    private final Map<RunId, Long> used = new HashMap<>();
    private final Map<String, RunId> places = new HashMap<>();
    private final boolean tight;

    private TrivialPass(PackingProblem problem, boolean tight) {
        this.problem = problem;
        this.tight = tight;
        bench = new Bench(problem);
    }

    /** The packings of all passes, by their names. */
    public static Map<String, Packing> all(PackingProblem problem) {
        Map<String, Packing> passes = new LinkedHashMap<>();
        UndoneWork work = new UndoneWork(problem);
        Map<String, Comparator<List<Piece>>> orders = new LinkedHashMap<>();
        Comparator<List<Piece>> byClass = Comparator.comparingInt(job -> work.classOf(job.get(0)));
        Comparator<List<Piece>> longest = Comparator.comparingLong(
                job -> -job.stream().mapToLong(piece -> piece.cut().mm()).sum());
        Comparator<List<Piece>> heaviest = Comparator.comparingLong(
                job -> -job.stream().mapToLong(work::weight).sum());
        Function<List<Piece>, Boolean> isSet = job -> job.get(0).isMatched();
        orders.put("by class, then longest", byClass.thenComparing(longest));
        orders.put("by class, then heaviest", byClass.thenComparing(heaviest).thenComparing(longest));
        orders.put("by class, then shortest", byClass.thenComparing(longest.reversed()));
        orders.put("by class, as ordered", byClass);
        orders.put(
                "by due",
                Comparator.comparing((List<Piece> job) -> job.stream()
                                .map(piece -> piece.source().due())
                                .min(Comparator.naturalOrder())
                                .orElseThrow())
                        .thenComparing(longest));
        orders.put(
                "sets first",
                Comparator.comparing(isSet).reversed().thenComparing(byClass).thenComparing(longest));
        orders.put(
                "singles first",
                Comparator.comparing(isSet).thenComparing(byClass).thenComparing(longest));
        orders.forEach((name, order) -> {
            passes.put(name + ", first fit", new TrivialPass(problem, false).pack(order, true));
            passes.put(name + ", best fit", new TrivialPass(problem, true).pack(order, true));
        });
        passes.put("singles only", new TrivialPass(problem, true).pack(byClass.thenComparing(longest), false));
        return passes;
    }

    private Packing pack(Comparator<List<Piece>> order, boolean sets) {
        Map<String, List<Piece>> jobs = new LinkedHashMap<>();
        for (Piece piece : problem.pieces()) {
            String name = piece.isMatched() ? "set " + piece.matching().set() : piece.id();
            jobs.computeIfAbsent(name, job -> new ArrayList<>()).add(piece);
        }
        jobs.values().stream()
                .filter(job -> sets || !job.get(0).isMatched())
                .sorted(order)
                .forEach(this::placeJob);
        return new Packing(places);
    }

    private void placeJob(List<Piece> job) {
        List<Piece> longestFirst =
                job.stream().sorted(Comparator.comparing(Piece::cut).reversed()).toList();
        Map<String, List<RunId>> holders = new LinkedHashMap<>();
        Bond bond = job.get(0).matching().bond();
        for (RunId run : bench.runs()) {
            String holder = bond == Bond.NONE
                    ? ""
                    : bond == Bond.ONE_REEL
                            ? run.reel()
                            : bench.reel(run.reel()).rope()
                                    + bench.reel(run.reel()).lot();
            holders.computeIfAbsent(holder, name -> new ArrayList<>()).add(run);
        }
        for (List<RunId> holder : holders.values()) {
            if (placeOn(longestFirst, holder)) {
                return;
            }
        }
    }

    private boolean placeOn(List<Piece> job, List<RunId> runs) {
        List<Piece> placed = new ArrayList<>();
        for (Piece piece : job) {
            RunId best = runs.stream()
                    .filter(run -> bench.allows(piece, bench.reel(run.reel())))
                    .filter(run -> left(run) >= bench.need(piece, run))
                    .min(tight ? Comparator.comparingLong(this::left) : Comparator.comparingInt(run -> 0))
                    .orElse(null);
            if (best == null) {
                placed.forEach(this::takeBack);
                return false;
            }
            places.put(piece.id(), best);
            used.merge(best, bench.need(piece, best), Long::sum);
            placed.add(piece);
        }
        return true;
    }

    private void takeBack(Piece piece) {
        RunId run = places.remove(piece.id());
        if (run != null) {
            used.merge(run, -bench.need(piece, run), Long::sum);
        }
    }

    private long left(RunId run) {
        return bench.room(run) - used.getOrDefault(run, 0L);
    }
}
