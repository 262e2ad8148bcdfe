package bitterend.packing.model;

import java.util.BitSet;
import java.util.List;

/** The runs that no hard rule bars for a piece, and how much of a run it takes by rope; shared by pieces that are alike. */
final class Homes {
    private final List<RunOfReel> runs;
    private final BitSet numbers = new BitSet();
    private final long[] sizes;

    /** @param sizes cut length and cut loss in millimetres, by number of the rope */
    Homes(List<RunOfReel> runs, long[] sizes) {
        this.runs = List.copyOf(runs);
        this.sizes = sizes;
        runs.forEach(run -> numbers.set(run.number()));
    }

    List<RunOfReel> runs() {
        return runs;
    }

    boolean holds(RunOfReel run) {
        return numbers.get(run.number());
    }

    long sizeOn(RunOfReel run) {
        return sizes[run.rope()];
    }
}
