package bitterend.packing.greedy;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A packing under construction: what lies on which run, and what one more piece would cost there. */
final class Bench {
    private final PackingProblem problem;
    private final RunLoad[][] loads;
    private final @Nullable Cost[] draws;
    private final int[] seen;
    private final Map<String, RunId> places = new HashMap<>();
    private final LotsOfOrders lots = new LotsOfOrders();
    private int asked;

    Bench(PackingProblem problem, Homes homes) {
        this.problem = problem;
        loads = new RunLoad[problem.reels().size()][];
        draws = new @Nullable Cost[loads.length];
        seen = new int[homes.all().size()];
        for (Slot slot : homes.all()) {
            RunLoad[] empty = new RunLoad[slot.draw().runs().size()];
            Arrays.fill(empty, RunLoad.NONE);
            loads[slot.reelNumber()] = empty;
            draws[slot.reelNumber()] = Cost.ZERO;
        }
    }

    boolean isPlaced(Piece piece) {
        return places.containsKey(piece.id());
    }

    RunLoad loadOf(Slot slot) {
        return loads[slot.reelNumber()][slot.run()];
    }

    /** Whether there is still room for a piece that is eligible there. */
    boolean hasRoom(Piece piece, Slot slot) {
        return slot.hasRoom(loadOf(slot), slot.cut(piece));
    }

    /** What one more piece there adds to the price of the plan. */
    Cost priceOf(Piece piece, Slot slot) {
        Cost price = adds(slot, loadOf(slot).plus(slot.cut(piece)));
        price = lots.splits(piece, slot) ? price.plus(problem.prices().splitOrder()) : price;
        return isMoved(piece, slot) ? price.plus(problem.prices().movedPiece()) : price;
    }

    /** What these pieces together add to the price of the plan. */
    Cost priceOf(List<Piece> pieces, Slot slot) {
        RunLoad load = loadOf(slot);
        long moved = 0;
        for (Piece piece : pieces) {
            load = load.plus(slot.cut(piece));
            moved += isMoved(piece, slot) ? 1 : 0;
        }
        return adds(slot, load)
                .plus(problem.prices().splitOrder().times(lots.newSplits(pieces, slot)))
                .plus(problem.prices().movedPiece().times(moved));
    }

    /** What the draw costs more when a run has this load instead. */
    private Cost adds(Slot slot, RunLoad load) {
        RunLoad[] onReel = loads[slot.reelNumber()];
        RunLoad now = onReel[slot.run()];
        onReel[slot.run()] = load;
        Cost then = slot.draw().of(onReel);
        onReel[slot.run()] = now;
        return then.minus(drawOf(slot));
    }

    /** The price of the draw as it is, reckoned once after each change. */
    private Cost drawOf(Slot slot) {
        Cost known = draws[slot.reelNumber()];
        if (known == null) {
            known = slot.draw().of(loads[slot.reelNumber()]);
            draws[slot.reelNumber()] = known;
        }
        return known;
    }

    private boolean isMoved(Piece piece, Slot slot) {
        String before = problem.earlier().get(piece.id());
        return before != null && !before.equals(slot.reel().id());
    }

    void place(Piece piece, Slot slot) {
        change(slot, loadOf(slot).plus(slot.cut(piece)));
        places.put(piece.id(), slot.id());
        lots.add(piece, slot);
    }

    void remove(Piece piece, Slot slot) {
        change(slot, loadOf(slot).minus(slot.cut(piece)));
        places.remove(piece.id());
        lots.remove(piece, slot);
    }

    private void change(Slot slot, RunLoad load) {
        loads[slot.reelNumber()][slot.run()] = load;
        draws[slot.reelNumber()] = null;
    }

    Packing packing() {
        return new Packing(places);
    }

    /** The cheapest of these slots with room; of equal ones the one that is filled best. */
    Optional<Slot> cheapest(Piece piece, List<Slot> slots) {
        Slot best = null;
        Cost bestPrice = Cost.ZERO;
        boolean anyTwin = !problem.earlier().containsKey(piece.id());
        asked++;
        for (Slot slot : slots) {
            if (hasRoom(piece, slot) && !(anyTwin && isKnown(slot))) {
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

    /** Whether nothing is cut from the reel and this question has come by another that is alike. */
    private boolean isKnown(Slot slot) {
        if (!loadOf(slot).isEmpty() || slot.draw().runs().size() > 1) {
            return false;
        }
        boolean known = seen[slot.twins()] == asked;
        seen[slot.twins()] = asked;
        return known;
    }

    private long leftAfter(Piece piece, Slot slot) {
        Length cut = slot.cut(piece);
        return loadOf(slot).plus(cut).leftOf(slot.length(), slot.draw().loss()).mm();
    }
}
