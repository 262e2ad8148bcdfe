package bitterend.packing;

import java.util.Comparator;

/**
 * A run of a reel.
 *
 * @param reel id of the reel
 * @param run 1 for the first run from the working end
 */
public record RunId(String reel, int run) implements Comparable<RunId> {
    private static final Comparator<RunId> ORDER =
            Comparator.comparing(RunId::reel).thenComparingInt(RunId::run);

    @Override
    public int compareTo(RunId other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return reel + " run " + run;
    }
}
