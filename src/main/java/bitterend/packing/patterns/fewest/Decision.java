package bitterend.packing.patterns.fewest;

/**
 * The reel whose longest piece is the only one of an item holds at least so many of another item; or it does not, or that
 * piece is no reel's longest.
 *
 * @param leader the item of which there is one
 * @param item a shorter one
 * @param copies at least one
 */
record Decision(int leader, int item, int copies) {}
