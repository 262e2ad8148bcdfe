package bitterend.packing.patterns;

import java.util.List;

/**
 * Reels that are cut alike.
 *
 * @param type place of the reel kind in the problem, from 0
 * @param reels how many are cut so
 * @param takes from one such reel, by run
 */
public record Draw(int type, int reels, List<Take> takes) {
    public Draw {
        takes = List.copyOf(takes);
        if (type < 0 || reels < 1 || takes.isEmpty()) {
            throw new IllegalArgumentException("not a draw: kind " + type + ", reels " + reels + ", takes " + takes);
        }
    }
}
