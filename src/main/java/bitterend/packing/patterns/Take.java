package bitterend.packing.patterns;

/**
 * Pieces of one item from one run.
 *
 * @param run place of the run on its reel, from 0
 * @param item place of the item in the problem, from 0
 * @param count how many, at least one
 */
public record Take(int run, int item, int count) {
    public Take {
        if (run < 0 || item < 0 || count < 1) {
            throw new IllegalArgumentException("not a take: run " + run + ", item " + item + ", count " + count);
        }
    }
}
