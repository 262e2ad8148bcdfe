package bitterend.packing.loads;

import bitterend.demand.Piece;
import bitterend.packing.PackingProblem;
import bitterend.packing.Undone;
import java.util.Arrays;
import java.util.List;

/** A day in the numbers of the engine. */
final class LoadModel {
    static final int CLASSES = Undone.CLASSES;

    final PackingProblem problem;
    /** Thousandths of a minor unit in one unit of money here; prices are rounded down, so that bounds hold. */
    final long unit;
    /** Millimetres of a cell. */
    final long cell;

    final Item[] items;
    final SetOfPieces[] sets;
    final OrderOnLots[] orders;
    final ReelOfRuns[] reels;
    final RunOfCells[] runs;
    /** Price of every lot of an order beyond the first. */
    final int split;
    /** More than any plan pays for a piece of each item: no dual need be higher. */
    final int[] dear;

    /** Pieces that a run takes at most. */
    final long mostPieces;
    /** A run whose rope costs nothing. */
    final int[] nothing;

    /** Pieces that no plan can cut, and their weight by class; they are among no items. */
    final List<Piece> nowhere;

    final long[] floor;

    LoadModel(LoadModelBuilder from, PricedReels priced) {
        problem = from.problem;
        unit = priced.unit;
        cell = from.rack.cell;
        items = from.items.toArray(Item[]::new);
        sets = from.sets.values().toArray(SetOfPieces[]::new);
        orders = from.orders.values().toArray(OrderOnLots[]::new);
        reels = priced.reels.toArray(ReelOfRuns[]::new);
        runs = Arrays.stream(reels).flatMap(reel -> Arrays.stream(reel.runs)).toArray(RunOfCells[]::new);
        split = (int) (problem.prices().splitOrder().millis() / unit);
        dear = priced.dear;
        nowhere = List.copyOf(from.nowhere);
        floor = from.floor;
        mostPieces = priced.mostPieces;
        nothing = new int[largestRoom() + 1];
    }

    int largestRoom() {
        return Arrays.stream(runs).mapToInt(run -> run.room).max().orElse(0);
    }

    /** Weight of each class if nothing at all were planned. */
    long[] everything() {
        long[] weight = new long[CLASSES];
        for (Item item : items) {
            weight[item.urgency] += item.weight * item.count();
        }
        return weight;
    }
}
