package bitterend.packing.model;

import bitterend.measure.Length;
import bitterend.packing.RunId;
import bitterend.stock.Run;
import org.optaplanner.core.api.domain.lookup.PlanningId;

/**
 * A run a piece may come off. Loads are in millimetres and count a cut loss with every piece; the room of a run is
 * therefore its length and one cut loss, since none is needed behind the last piece.
 */
public final class RunOfReel {
    private final ReelOnRack reel;
    private final Run run;
    private final int number;
    private final int rope;
    private final long loss;
    private final KnownValues values;
    private final long whole;
    private final long shape;

    RunOfReel(ReelOnRack reel, Run run, int number, RopeOnRack rope) {
        this.reel = reel;
        this.run = run;
        this.number = number;
        this.rope = rope.number();
        loss = rope.loss();
        values = rope.valuesOf(reel.reel());
        whole = values.millisOf(run.length().mm());
        shape = rope.shapeMillis(whole);
    }

    @PlanningId
    public String key() {
        return id().toString();
    }

    public RunId id() {
        return new RunId(reel.id(), run.index());
    }

    public ReelOnRack reel() {
        return reel;
    }

    public Run run() {
        return run;
    }

    /** Counts the runs of the bench from 0. */
    public int number() {
        return number;
    }

    /** Number of the rope on the reel, counted from 0. */
    int rope() {
        return rope;
    }

    public Length length() {
        return run.length();
    }

    /** The largest load that fits. */
    public long room() {
        return run.length().mm() + loss;
    }

    /** How much a load is too long; zero or less when it fits. */
    public long over(long load) {
        return load - room();
    }

    /** The value that leaves the rack under a load, in 1/1000 minor unit. */
    public long dropMillis(long load) {
        return load == 0 ? 0 : whole - values.millisOf(Math.max(0, run.length().mm() - load));
    }

    /**
     * What steers the search towards runs that are full or empty: greatest when a run is half full, nothing at either end.
     * Not money.
     */
    public long shapingMillis(long load) {
        long room = room();
        long used = Math.min(load, room);
        return (long) ((double) shape * used / room * (room - used) / room);
    }

    @Override
    public String toString() {
        return key();
    }
}
