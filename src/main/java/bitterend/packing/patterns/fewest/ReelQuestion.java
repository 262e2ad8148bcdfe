package bitterend.packing.patterns.fewest;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Whether all pieces go into so many reels of one length. */
public final class ReelQuestion {
    final int[] size;
    final int[] count;
    final int room;
    final int reels;
    /** What the reels leave over, all together. */
    final long waste;

    /**
     * @param size of the pieces of each item, in steps, longest first
     * @param count of each item
     * @param room of a reel, in steps
     * @param reels how many there are
     */
    public ReelQuestion(int[] size, int[] count, int room, int reels) {
        this.size = size.clone();
        this.count = count.clone();
        this.room = room;
        this.reels = reels;
        long sum = 0;
        for (int i = 0; i < size.length; i++) {
            if (size[i] < 1 || size[i] > room || (i > 0 && size[i] > size[i - 1])) {
                throw new IllegalArgumentException("sizes must fall from " + room + " at most: " + size[i]);
            }
            sum += (long) size[i] * count[i];
        }
        waste = (long) room * reels - sum;
    }

    int items() {
        return size.length;
    }

    /** The least that may be cut from a reel; 0 where one may stay untouched. */
    int leastLoad() {
        return (int) Math.max(0, room - waste);
    }

    /** A reel may stay untouched. */
    boolean isSpare() {
        return waste >= room;
    }

    /** The item of every piece. */
    int[] origins() {
        return IntStream.range(0, items())
                .flatMap(item -> IntStream.generate(() -> item).limit(count[item]))
                .toArray();
    }

    /** The same with every piece an item of its own. */
    ReelQuestion pieceByPiece() {
        int[] sizes = Arrays.stream(origins()).map(item -> size[item]).toArray();
        int[] ones = new int[sizes.length];
        Arrays.fill(ones, 1);
        return new ReelQuestion(sizes, ones, room, reels);
    }
}
