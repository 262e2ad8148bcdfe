package bitterend.packing.explain;

import bitterend.demand.Piece;
import bitterend.packing.RunId;
import bitterend.packing.bench.RackState;
import bitterend.packing.bench.Workbench;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether some reels have room for several pieces together, beside what the plan cuts from them. */
final class SetRoom {
    /** Places tried at most; beyond that there is said to be no room, which is on the safe side. */
    private static final int PATIENCE = 20_000;

    private final List<String> ropes = new ArrayList<>();
    private final List<Long> losses = new ArrayList<>();
    private final List<Long> free = new ArrayList<>();
    private int tries;

    SetRoom(Workbench bench, RackState rack, List<Reel> reels) {
        for (Reel reel : reels) {
            for (Run run : reel.runs()) {
                int number = bench.numberOf(new RunId(reel.id(), run.index()));
                ropes.add(reel.rope());
                losses.add(bench.loss(number));
                free.add(rack.free(number) + bench.loss(number));
            }
        }
    }

    /** The longest pieces first. */
    boolean takes(List<Piece> pieces) {
        tries = 0;
        return takes(pieces, 0);
    }

    private boolean takes(List<Piece> pieces, int from) {
        if (from == pieces.size()) {
            return true;
        }
        Set<Long> tried = new HashSet<>();
        for (int run = 0; run < free.size(); run++) {
            long before = free.get(run);
            long after = before - need(pieces.get(from), run);
            if (after >= 0 && tried.add(before) && tries++ < PATIENCE) {
                free.set(run, after);
                boolean all = takes(pieces, from + 1);
                free.set(run, before);
                if (all) {
                    return true;
                }
            }
        }
        return false;
    }

    private long need(Piece piece, int run) {
        return piece.lengthOn(ropes.get(run)).orElseThrow().mm() + losses.get(run);
    }
}
