package bitterend.packing.model;

import bitterend.demand.Piece.Bond;

/**
 * Pieces that must match.
 *
 * @param name name of the set
 * @param bond how close it must stay together
 * @param size how many pieces it has
 */
public record MatchedSet(String name, Bond bond, int size) {
    /** What all pieces of the set must share. */
    public String bondOf(RunOfReel run) {
        return run.reel().holderOf(bond);
    }
}
