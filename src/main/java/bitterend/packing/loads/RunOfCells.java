package bitterend.packing.loads;

/** A sound run, counted in cells of the common divisor of all lengths with their cut loss. */
final class RunOfCells {
    /** Among all runs of all reels. */
    final int index;

    final int reel;
    /** On its reel, 0 for the first that comes off. */
    final int place;
    /** The largest load. */
    final int room;
    /** Value that leaves the rack under each load. */
    final int[] drop;

    RunOfCells(int index, int reel, int place, int room, int[] drop) {
        this.index = index;
        this.reel = reel;
        this.place = place;
        this.room = room;
        this.drop = drop;
    }
}
