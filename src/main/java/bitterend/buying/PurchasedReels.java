package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.market.Offer;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Mass;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import bitterend.packing.WorkingDays;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The reels of each offer that a packing cuts, and the order of reels that follows from it. */
final class PurchasedReels {
    private final Orders orders;
    private final PurchaseProblem market;
    private final PackingProblem problem;
    private final Packing packing;
    private final Map<String, List<Reel>> cut = new TreeMap<>();

    PurchasedReels(Orders orders, PurchaseProblem market, PackingProblem problem, Packing packing) {
        this.orders = orders;
        this.market = market;
        this.problem = problem;
        this.packing = packing;
        packing.places().values().stream()
                .map(RunId::reel)
                .distinct()
                .sorted()
                .map(problem::reel)
                .forEach(reel -> market.offerOf(reel)
                        .ifPresent(offer -> cut.computeIfAbsent(offer.id(), id -> new ArrayList<>())
                                .add(reel)));
    }

    /** The reels that are bought: those committed to, and the others that are cut. */
    ReelSet set(ReelSet committed) {
        ReelSet set = committed;
        for (Map.Entry<String, List<Reel>> entry : cut.entrySet()) {
            String marking = orders.offer(entry.getKey()).marking();
            long free = entry.getValue().stream()
                    .filter(reel -> reel.rope().equals(marking))
                    .count();
            set = set.with(entry.getKey(), committed.of(entry.getKey()) + (int) free);
        }
        return set;
    }

    /** The worth of what is left of the reels that are cut, and of those that are bought beyond them, whole. */
    Cost left(ReelSet set) {
        Map<String, RunLoad[]> loads = new PlanPrice(problem).loads(packing);
        Cost sum = Cost.ZERO;
        for (String id : set.counts().keySet()) {
            Offer offer = orders.offer(id);
            PaidValue value = market.value(offer, true);
            for (Reel reel : reelsOf(id)) {
                Length loss = problem.ropeOn(reel).cutting().loss();
                RunLoad[] load = loads.getOrDefault(reel.id(), new RunLoad[] {RunLoad.NONE});
                sum = sum.plus(value.left(load[0].leftOf(offer.usable(), loss)));
            }
            sum = sum.plus(
                    value.left(offer.usable()).times(set.of(id) - reelsOf(id).size()));
        }
        return sum;
    }

    /** A line for each offer. */
    List<ReelLine> lines(ReelSet set) {
        List<ReelLine> lines = new ArrayList<>();
        set.counts().forEach((id, count) -> {
            Offer offer = orders.offer(id);
            List<Piece> pieces = piecesOf(id);
            Mass mass = orders.day()
                    .rope(offer.rope())
                    .mass()
                    .of(offer.made().length().times(count));
            boolean matched = pieces.stream().anyMatch(Piece::isMatched);
            lines.add(new ReelLine(offer, count, orderBy(offer, pieces), mass, matched));
        });
        return lines;
    }

    private List<Reel> reelsOf(String offer) {
        return cut.getOrDefault(offer, List.of());
    }

    private List<Piece> piecesOf(String offer) {
        List<String> reels = reelsOf(offer).stream().map(Reel::id).toList();
        return problem.pieces().stream()
                .filter(piece -> packing.placeOf(piece.id())
                        .filter(place -> reels.contains(place.reel()))
                        .isPresent())
                .toList();
    }

    private LocalDate orderBy(Offer offer, List<Piece> pieces) {
        WorkingDays working = new WorkingDays(problem.calendar());
        LocalDate due =
                pieces.stream().map(working::cutBy).min(LocalDate::compareTo).orElse(LocalDate.MAX);
        return due.equals(LocalDate.MAX)
                ? due
                : due.minusDays(offer.terms().lead().days());
    }
}
