package bitterend.packing.loads;

/**
 * A charge for the first piece of an order, or of a set, that is cut from a run.
 *
 * @param ofSet whether it is a set's, else an order's
 * @param index of the set or order
 * @param run index of the run
 */
record Touch(boolean ofSet, int index, int run) {}
