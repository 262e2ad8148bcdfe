package bitterend.shops;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Cost;
import bitterend.measure.Sentence;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.ReelDraw;
import bitterend.packing.Rule;
import bitterend.packing.RunId;
import bitterend.packing.Unplanned;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;

/**
 * Writes places down as a plan, in cutting order. Keeps no hard rule: places that break one are written down as
 * faithfully as good ones, so that a checker can be shown them.
 */
public final class PlanWriter {
    private final PackingProblem problem;
    private final Packing packing;

    private PlanWriter(PackingProblem problem, Packing packing) {
        this.problem = problem;
        this.packing = packing;
    }

    public static CutPlan write(PackingProblem problem, Packing packing) {
        return new PlanWriter(problem, packing).plan();
    }

    private CutPlan plan() {
        List<ReelDraw> draws = draws(new FewestHomesFirst(problem, packing)::of);
        LengthBook book = draws.stream().map(ReelDraw::book).reduce(LengthBook.EMPTY, LengthBook::plus);
        return new CutPlan(problem.day(), draws, unplanned(), book, cost(draws), List.of());
    }

    /** The true price of a packing. */
    static Cost cost(PackingProblem problem, Packing packing) {
        PlanWriter writer = new PlanWriter(problem, packing);
        return writer.cost(writer.draws((run, reel) -> run));
    }

    private List<ReelDraw> draws(BiFunction<List<Piece>, String, List<Piece>> order) {
        Map<String, Map<Integer, List<Piece>>> byReel = new TreeMap<>();
        for (Piece piece : sorted()) {
            packing.placeOf(piece.id()).ifPresent(at -> byReel.computeIfAbsent(at.reel(), any -> new TreeMap<>())
                    .computeIfAbsent(at.run(), any -> new ArrayList<>())
                    .add(piece));
        }
        List<ReelDraw> draws = new ArrayList<>();
        for (Reel reel : problem.reels()) {
            Map<Integer, List<Piece>> pieces = byReel.get(reel.id());
            if (pieces != null) {
                pieces.replaceAll((run, cut) -> order.apply(cut, reel.id()));
                draws.add(new DrawWriter(problem, reel, pieces).draw());
            }
        }
        draws.sort(Comparator.comparing(ReelDraw::reel, NaturalOrder.IDS));
        return draws;
    }

    private List<Piece> sorted() {
        return problem.pieces().stream()
                .sorted(Comparator.comparing(Piece::id, NaturalOrder.IDS))
                .toList();
    }

    private List<Unplanned> unplanned() {
        Reason reason = new Reason(Rule.PLANNED, "no room was found for it");
        return sorted().stream()
                .filter(piece -> packing.placeOf(piece.id()).isEmpty())
                .map(piece -> new Unplanned(piece.id(), reason, Sentence.of("more rope")))
                .toList();
    }

    private Cost cost(List<ReelDraw> draws) {
        Cost cost = draws.stream().map(ReelDraw::cost).reduce(Cost.ZERO, Cost::plus);
        Set<String> lots = new HashSet<>();
        Set<String> orders = new HashSet<>();
        long moved = 0;
        Bench bench = new Bench(problem);
        for (Piece piece : problem.pieces()) {
            RunId at = packing.placeOf(piece.id()).orElse(null);
            if (at != null) {
                Reel reel = bench.reel(at.reel());
                orders.add(piece.order() + "\n" + reel.rope());
                lots.add(piece.order() + "\n" + reel.rope() + "\n" + Bench.lot(reel));
                moved += problem.earlier().getOrDefault(piece.id(), reel.id()).equals(reel.id()) ? 0 : 1;
            }
        }
        return cost.plus(problem.prices().splitOrder().times(lots.size() - orders.size()))
                .plus(problem.prices().movedPiece().times(moved));
    }
}
