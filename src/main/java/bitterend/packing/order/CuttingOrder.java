package bitterend.packing.order;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunId;
import bitterend.packing.bench.RackState;
import bitterend.packing.bench.Workbench;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Turns a packing into a plan: cuts in order, running marks, books, reasons for what is left undone. */
public final class CuttingOrder {
    private final PackingProblem problem;
    private final Workbench bench;
    private final PlanPrice prices;
    private final SheetOrder sheets;

    public CuttingOrder(PackingProblem problem) {
        this.problem = problem;
        bench = new Workbench(problem);
        prices = bench.prices();
        sheets = new SheetOrder(problem);
    }

    /** The same plan with equal pieces numbered in the order in which they are cut, unless that made it dearer. */
    public CutPlan numbered(Packing packing) {
        CutPlan plan = plan(packing);
        Packing named = new CutNumbers(problem).inOrder(packing, plan);
        if (named.equals(packing)) {
            return plan;
        }
        CutPlan inOrder = plan(named);
        return inOrder.cost().compareTo(plan.cost()) > 0 ? plan : inOrder;
    }

    /** The plan of a packing that breaks no hard rule; nothing is proven of it yet. */
    public CutPlan plan(Packing packing) {
        RackState rack = RackState.of(bench, packing);
        CuttingSequence sequence = new CuttingSequence(bench, rack);
        Map<RunId, List<Piece>> byRun = problem.pieces().stream()
                .filter(piece -> packing.places().containsKey(piece.id()))
                .collect(Collectors.groupingBy(
                        piece -> packing.placeOf(piece.id()).orElseThrow(), TreeMap::new, Collectors.toList()));
        List<ReelDraw> draws = new ArrayList<>();
        for (Reel reel : sortedReels()) {
            List<List<Piece>> planned = prices.draw(reel.id()).runs().stream()
                    .map(run -> byRun.getOrDefault(new RunId(reel.id(), run.index()), List.of()))
                    .toList();
            List<List<Piece>> runs = sheets.runs(
                            reel,
                            prices.draw(reel.id()),
                            planned.stream().flatMap(List::stream).toList())
                    .orElseGet(() -> planned.stream()
                            .map(pieces -> sequence.of(pieces, reel.id()))
                            .toList());
            if (runs.stream().anyMatch(run -> !run.isEmpty())) {
                draws.add(new ReelBook(problem, reel, prices.draw(reel.id())).draw(runs));
            }
        }
        LengthBook book = draws.stream().map(ReelDraw::book).reduce(LengthBook.EMPTY, LengthBook::plus);
        return new CutPlan(
                problem.day(),
                draws,
                new Shortfall(bench, rack).unplanned(),
                book,
                ReelBook.sum(draws).plus(prices.acrossReels(packing)),
                List.of());
    }

    private List<Reel> sortedReels() {
        return problem.reels().stream()
                .sorted(Comparator.comparing(Reel::id, NaturalOrder.IDS))
                .toList();
    }
}
