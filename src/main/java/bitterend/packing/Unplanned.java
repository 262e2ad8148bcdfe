package bitterend.packing;

import bitterend.measure.Sentence;

/**
 * A piece that could not be planned.
 *
 * @param piece id of the piece
 * @param reason why not
 * @param help what would help
 */
public record Unplanned(String piece, Reason reason, Sentence help) {}
