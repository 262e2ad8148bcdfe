package bitterend.quoting;

import bitterend.measure.Length;
import java.util.List;

/**
 * How many reels of one length pieces need at least, were all cut from such reels: as many as hold their sum, and one for each
 * piece that is longer than half a reel.
 *
 * @param cuts the cut lengths
 */
record ReelsNeeded(List<Length> cuts) {
    ReelsNeeded {
        cuts = List.copyOf(cuts);
    }

    /** Of pieces that a reel is too short for nothing is counted; at least 1. */
    int of(Length reel) {
        List<Length> held = cuts.stream().filter(cut -> !cut.isLongerThan(reel)).toList();
        long sum = held.stream().mapToLong(Length::mm).sum();
        long longOnes = held.stream().filter(cut -> 2 * cut.mm() > reel.mm()).count();
        return Math.toIntExact(Math.max(1, Math.max(longOnes, -Math.floorDiv(-sum, reel.mm()))));
    }
}
