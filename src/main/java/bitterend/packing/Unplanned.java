package bitterend.packing;

/**
 * A piece that could not be planned.
 *
 * @param piece id of the piece
 * @param reason why not
 * @param help what would help
 */
public record Unplanned(String piece, Reason reason, String help) {}
