package bitterend.packing.bench;

import bitterend.packing.Packing;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Which piece comes off which run, and the loads in cells: for moves that are made by the hundred thousand. */
final class CellRack {
    final Workbench bench;
    final RunDrops prices;
    final int[] runOf;
    final int[] load;
    final OrderLots lots;
    private final List<List<Integer>> onRun = new ArrayList<>();

    CellRack(Workbench bench, RunDrops prices, Packing packing) {
        this.bench = bench;
        this.prices = prices;
        runOf = new int[bench.pieces];
        Arrays.fill(runOf, Workbench.NONE);
        load = new int[bench.runs];
        lots = new OrderLots(bench.pieceTable.piecesOfOrder, bench.runTable.ropeOfLot);
        for (int run = 0; run < bench.runs; run++) {
            onRun.add(new ArrayList<>());
        }
        packing.places().forEach((piece, run) -> place(bench.numberOf(piece), bench.numberOf(run)));
    }

    /** The pieces on a run, in no order. */
    List<Integer> onRun(int run) {
        return onRun.get(run);
    }

    void place(int piece, int run) {
        runOf[piece] = run;
        load[run] += prices.cells(piece, run);
        onRun.get(run).add(piece);
        if (orderOf(piece) != Workbench.NONE) {
            lots.add(orderOf(piece), bench.runTable.lotOf[run]);
        }
    }

    void remove(int piece) {
        int run = runOf[piece];
        runOf[piece] = Workbench.NONE;
        load[run] -= prices.cells(piece, run);
        onRun.get(run).remove(Integer.valueOf(piece));
        if (orderOf(piece) != Workbench.NONE) {
            lots.remove(orderOf(piece), bench.runTable.lotOf[run]);
        }
    }

    /** The order of a piece, {@link Workbench#NONE} where it cannot be split. */
    int orderOf(int piece) {
        return bench.pieceTable.orderOf[piece];
    }
}
