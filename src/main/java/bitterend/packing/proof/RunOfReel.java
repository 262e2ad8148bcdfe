package bitterend.packing.proof;

/**
 * A run of a reel.
 *
 * @param reel id of the reel
 * @param run 1 for the first run from the working end
 */
public record RunOfReel(String reel, int run) {
    public RunOfReel {
        if (run < 1) {
            throw new IllegalArgumentException("runs are counted from 1: " + run);
        }
    }
}
