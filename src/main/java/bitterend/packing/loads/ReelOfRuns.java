package bitterend.packing.loads;

/** A single reel: what touching it costs, and its runs. All money in units of the engine. */
final class ReelOfRuns {
    final int index;
    final String id;
    /** Price of drawing anything at all. */
    final int opening;
    /** Price of cutting off a run unused. */
    final int handling;

    final RunOfCells[] runs;
    /** The reel after it among reels that are alike, {@link Item#NONE} for none. */
    int next = Item.NONE;

    ReelOfRuns(int index, String id, int opening, int handling, RunOfCells[] runs) {
        this.index = index;
        this.id = id;
        this.opening = opening;
        this.handling = handling;
        this.runs = runs;
    }

    /** The same reel, where drawing costs nothing. */
    ReelOfRuns free() {
        return new ReelOfRuns(index, id, 0, 0, runs);
    }

    /** The price of loads, one for each run; 0 for a reel that is not touched. */
    int cost(int[] loads) {
        int deepest = loads.length - 1;
        while (deepest >= 0 && loads[deepest] == 0) {
            deepest--;
        }
        if (deepest < 0) {
            return 0;
        }
        int sum = opening;
        for (int j = 0; j <= deepest; j++) {
            sum += loads[j] == 0 ? handling : runs[j].drop[loads[j]];
        }
        return sum;
    }
}
