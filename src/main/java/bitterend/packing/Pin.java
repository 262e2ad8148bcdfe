package bitterend.packing;

/**
 * A draw that must stay.
 *
 * @param piece id of the piece
 * @param reel id of the reel it must come off
 */
public record Pin(String piece, String reel) {}
