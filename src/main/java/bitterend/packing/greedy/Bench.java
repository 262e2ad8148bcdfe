package bitterend.packing.greedy;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.DrawPrice;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import bitterend.stock.Reel;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A packing under construction: what lies on which run, and what one more piece would cost there. */
final class Bench {
    private final PackingProblem problem;
    private final PlanPrice prices;
    private final Map<String, RunLoad[]> loads = new HashMap<>();
    private final Map<String, RunId> places = new HashMap<>();
    private final LotsOfOrders lots = new LotsOfOrders();

    Bench(PackingProblem problem, PlanPrice prices) {
        this.problem = problem;
        this.prices = prices;
    }

    boolean isPlaced(Piece piece) {
        return places.containsKey(piece.id());
    }

    RunLoad loadOf(Slot slot) {
        return loads(slot.reel())[slot.run()];
    }

    /** Whether there is still room for a piece that is eligible there. */
    boolean hasRoom(Piece piece, Slot slot) {
        DrawPrice draw = prices.draw(slot.reel().id());
        return loadOf(slot).plus(cutOn(piece, slot)).fits(slot.length(), draw.loss());
    }

    /** What one more piece there adds to the price of the plan. */
    Cost priceOf(Piece piece, Slot slot) {
        return priceOf(List.of(piece), slot);
    }

    /** What these pieces together add to the price of the plan. */
    Cost priceOf(List<Piece> pieces, Slot slot) {
        DrawPrice draw = prices.draw(slot.reel().id());
        RunLoad[] now = loads(slot.reel());
        RunLoad[] then = now.clone();
        long moved = 0;
        for (Piece piece : pieces) {
            then[slot.run()] = then[slot.run()].plus(cutOn(piece, slot));
            String before =
                    problem.earlier().getOrDefault(piece.id(), slot.reel().id());
            moved += before.equals(slot.reel().id()) ? 0 : 1;
        }
        long splits = lots.newSplits(pieces, slot.reel());
        return draw.of(then)
                .minus(draw.of(now))
                .plus(problem.prices().splitOrder().times(splits))
                .plus(problem.prices().movedPiece().times(moved));
    }

    void place(Piece piece, Slot slot) {
        RunLoad[] load = loads(slot.reel());
        load[slot.run()] = load[slot.run()].plus(cutOn(piece, slot));
        places.put(piece.id(), slot.id());
        lots.add(piece, slot.reel());
    }

    void remove(Piece piece, Slot slot) {
        RunLoad[] load = loads(slot.reel());
        load[slot.run()] = load[slot.run()].minus(cutOn(piece, slot));
        places.remove(piece.id());
        lots.remove(piece, slot.reel());
    }

    Packing packing() {
        return new Packing(places);
    }

    /** The cheapest of these slots with room; of equal ones the one that is filled best. */
    Optional<Slot> cheapest(Piece piece, List<Slot> slots) {
        Slot best = null;
        Cost bestPrice = Cost.ZERO;
        for (Slot slot : slots) {
            if (hasRoom(piece, slot)) {
                Cost price = priceOf(piece, slot);
                int order = best == null ? -1 : price.compareTo(bestPrice);
                if (best == null || order < 0 || (order == 0 && leftAfter(piece, slot) < leftAfter(piece, best))) {
                    best = slot;
                    bestPrice = price;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private long leftAfter(Piece piece, Slot slot) {
        DrawPrice draw = prices.draw(slot.reel().id());
        return loadOf(slot)
                .plus(cutOn(piece, slot))
                .leftOf(slot.length(), draw.loss())
                .mm();
    }

    static Length cutOn(Piece piece, Slot slot) {
        return piece.lengthOn(slot.reel().rope()).orElseThrow();
    }

    private RunLoad[] loads(Reel reel) {
        return loads.computeIfAbsent(reel.id(), id -> {
            RunLoad[] empty = new RunLoad[prices.draw(id).runs().size()];
            Arrays.fill(empty, RunLoad.NONE);
            return empty;
        });
    }
}
