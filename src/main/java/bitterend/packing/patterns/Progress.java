package bitterend.packing.patterns;

/**
 * Where the engine stands.
 *
 * @param unplannedWeight of the best plan
 * @param cost of the best plan
 * @param bound no plan that leaves no more unplanned costs less
 */
public record Progress(long unplannedWeight, long cost, long bound) {}
