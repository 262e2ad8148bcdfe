package bitterend.packing.patterns;

import java.util.List;

/**
 * Reels that are cut alike.
 *
 * @param kind place of the reel kind in the problem, from 0
 * @param reels how many are cut so
 * @param takes from one such reel, by run
 */
public record Draw(int kind, int reels, List<Take> takes) {
    public Draw {
        takes = List.copyOf(takes);
        if (kind < 0 || reels < 1 || takes.isEmpty()) {
            throw new IllegalArgumentException("not a draw: kind " + kind + ", reels " + reels + ", takes " + takes);
        }
    }
}
