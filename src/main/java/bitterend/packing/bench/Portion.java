package bitterend.packing.bench;

/** Pieces that go to one of two runs together: a piece by itself, or a whole set. */
final class Portion {
    private final int[] pieces;
    private final int cells;
    private final int order;

    /**
     * Pieces that lie on one run.
     *
     * @param pieces their numbers; not to be changed
     * @param cells that they take with their cuts, the same on both runs
     * @param order of all of them, or {@link Workbench#NONE}
     */
    Portion(int[] pieces, int cells, int order) {
        this.pieces = pieces;
        this.cells = cells;
        this.order = order;
    }

    int[] pieces() {
        return pieces;
    }

    int cells() {
        return cells;
    }

    int order() {
        return order;
    }
}
