package bitterend.packing.bench;

/**
 * Pieces that go to one of two runs together: a piece by itself, or a whole set.
 *
 * @param pieces their numbers
 * @param cells that they take with their cuts, the same on both
 * @param order of all of them, or {@link Workbench#NONE}
 */
record Portion(int[] pieces, int cells, int order) {}
