package bitterend.serve;

/**
 * A place of the rack while it is counted.
 *
 * @param name what it is called
 * @param counted how many of its reels are counted
 * @param reels how many it has
 * @param path the first of its reels that is not
 */
public record CountPlace(String name, int counted, int reels, String path) {
    /** Whether all of it is counted. */
    public boolean done() {
        return counted == reels;
    }
}
