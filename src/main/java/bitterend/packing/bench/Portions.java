package bitterend.packing.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What may be divided between two runs: pieces that both take on the same terms; of a set no more than it allows. */
final class Portions {
    private final CellRack rack;
    private final Workbench bench;

    Portions(CellRack rack) {
        this.rack = rack;
        bench = rack.bench;
    }

    /** All that lies on two runs and may lie on either, order by order. */
    List<Portion> of(int one, int other) {
        List<Portion> all = new ArrayList<>();
        add(all, rack.onRun(one), one, other);
        add(all, rack.onRun(other), one, other);
        all.sort(Comparator.comparingInt(Portion::order));
        return all;
    }

    private void add(List<Portion> all, List<Integer> pieces, int one, int other) {
        for (int piece : pieces) {
            int job = bench.jobOf[piece];
            boolean apart = !bench.isSet(job) || bench.holderOf(job, one) == bench.holderOf(job, other);
            int[] together = apart ? new int[] {piece} : bench.jobs[job];
            if (together[0] == piece && areFree(together, one, other)) {
                all.add(portion(together, one));
            }
        }
    }

    private Portion portion(int[] pieces, int run) {
        int cells = 0;
        for (int piece : pieces) {
            cells += rack.prices.cells(piece, run);
        }
        return new Portion(pieces, cells, rack.orderOf(pieces[0]));
    }

    /** Whether all of them are of one order and lie on one run, and each may lie on either. */
    private boolean areFree(int[] pieces, int one, int other) {
        for (int piece : pieces) {
            boolean together =
                    rack.runOf[piece] == rack.runOf[pieces[0]] && rack.orderOf(piece) == rack.orderOf(pieces[0]);
            if (!together || !isFree(piece, one, other)) {
                return false;
            }
        }
        return true;
    }

    private boolean isFree(int piece, int one, int other) {
        return !bench.pieceTable.pinned[piece]
                && bench.isHome(piece, one)
                && bench.isHome(piece, other)
                && rack.prices.cells(piece, one) == rack.prices.cells(piece, other)
                && (bench.movedPiece == 0 || bench.pieceTable.earlier[piece] == Workbench.NONE);
    }
}
