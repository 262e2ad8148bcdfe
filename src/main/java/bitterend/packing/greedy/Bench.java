package bitterend.packing.greedy;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A packing under construction: what lies on which run, and what one more piece would cost there. */
final class Bench {
    private final PackingProblem problem;
    private final Homes homes;
    private final RunLoad[][] loads;
    /** The last run of each reel that is cut, from zero, or -1. */
    private final int[] deepest;
    /** By slot: what is left for one more piece, in mm. */
    private final long[] room;

    private final int[] seen;
    private final Map<String, RunId> places = new HashMap<>();
    private final LotsOfOrders lots = new LotsOfOrders();
    private final Quotes quotes;
    private final long splitOrder;
    private final long movedPiece;
    private int asked;

    Bench(PackingProblem problem, Homes homes) {
        this.problem = problem;
        this.homes = homes;
        splitOrder = problem.prices().splitOrder().millis();
        movedPiece = problem.prices().movedPiece().millis();
        loads = new RunLoad[problem.reels().size()][];
        deepest = new int[loads.length];
        Arrays.fill(deepest, -1);
        seen = new int[homes.all().size()];
        room = new long[homes.all().size()];
        quotes = new Quotes(loads.length, homes.all().size());
        for (Slot slot : homes.all()) {
            if (loads[slot.reelNumber()] == null) {
                RunLoad[] empty = new RunLoad[slot.draw().runs().size()];
                Arrays.fill(empty, RunLoad.NONE);
                loads[slot.reelNumber()] = empty;
            }
            room[slot.number()] = slot.room(RunLoad.NONE);
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
        return slot.cut(piece).mm() <= room[slot.number()];
    }

    /** What one more piece there adds to the price of the plan. */
    Cost priceOf(Piece piece, Slot slot) {
        return new Cost(adds(homes.open(piece).kind(), piece, slot)
                + (lots.of(piece).splits(slot) ? splitOrder : 0)
                + moving(piece, slot));
    }

    /** What these pieces together add to the price of the plan. */
    Cost priceOf(List<Piece> pieces, Slot slot) {
        RunLoad load = loadOf(slot);
        long moving = 0;
        for (Piece piece : pieces) {
            load = load.plus(slot.cut(piece));
            moving += moving(piece, slot);
        }
        return new Cost(adds(slot, load) + splitOrder * lots.newSplits(pieces, slot) + moving);
    }

    /** What the draw costs more with one more piece; asked once for pieces that are alike while the reel stays as it is. */
    private long adds(int kind, Piece piece, Slot slot) {
        if (quotes.isKnown(kind, slot)) {
            return quotes.get(kind, slot);
        }
        long price = adds(slot, loadOf(slot).plus(slot.cut(piece)));
        quotes.put(kind, slot, price);
        return price;
    }

    private long adds(Slot slot, RunLoad load) {
        return slot.draw()
                .growth(loads[slot.reelNumber()], deepest[slot.reelNumber()], slot.run(), load)
                .millis();
    }

    private long moving(Piece piece, Slot slot) {
        String before = problem.earlier().get(piece.id());
        return before != null && !before.equals(slot.reel().id()) ? movedPiece : 0;
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
        int reel = slot.reelNumber();
        loads[reel][slot.run()] = load;
        room[slot.number()] = slot.room(load);
        deepest[reel] = Math.max(deepest[reel], slot.run());
        while (deepest[reel] >= 0 && loads[reel][deepest[reel]].isEmpty()) {
            deepest[reel]--;
        }
        quotes.forget(reel);
    }

    Packing packing() {
        return new Packing(places);
    }

    /** The cheapest of these slots with room; of equal ones the one that is filled best. */
    Optional<Slot> cheapest(Piece piece, List<Slot> slots) {
        Slot best = null;
        long bestPrice = 0;
        long bestLeft = 0;
        boolean isNew = !problem.earlier().containsKey(piece.id());
        LotsOfOrders.OfOrder order = lots.of(piece);
        int kind = homes.open(piece).kind();
        asked++;
        for (Slot slot : slots) {
            long left = room[slot.number()] - slot.cut(piece).mm();
            if (left < 0 || (isNew && isKnown(slot))) {
                continue;
            }
            long price = adds(kind, piece, slot) + (order.splits(slot) ? splitOrder : 0);
            price += isNew ? 0 : moving(piece, slot);
            if (best == null || price < bestPrice || (price == bestPrice && left < bestLeft)) {
                best = slot;
                bestPrice = price;
                bestLeft = left;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Whether nothing is cut from the reel and this question has come by another that is alike. */
    private boolean isKnown(Slot slot) {
        if (deepest[slot.reelNumber()] >= 0 || slot.draw().runs().size() > 1) {
            return false;
        }
        boolean known = seen[slot.twins()] == asked;
        seen[slot.twins()] = asked;
        return known;
    }
}
