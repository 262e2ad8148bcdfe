package bitterend.day;

import bitterend.measure.Length;
import java.util.Map;
import java.util.Set;

/**
 * What was found at the bench while a part of a plan was cut.
 *
 * @param measured length of pieces that did not come out as planned
 * @param left by reel, what was measured behind its last cut; nothing at all when the reel ended there
 * @param skipped pieces that were not cut off the reel they were planned on
 * @param words what the cutter confirms
 * @param scrapReason why rope was scrapped, where it was not for its length alone; may be empty
 */
public record Found(
        Map<String, Length> measured,
        Map<String, Length> left,
        Set<String> skipped,
        Set<Word> words,
        String scrapReason) {
    /** All came out as planned. */
    public static final Found AS_PLANNED = new Found(Map.of(), Map.of(), Set.of(), Set.of(), "");

    public Found {
        measured = Map.copyOf(measured);
        left = Map.copyOf(left);
        skipped = Set.copyOf(skipped);
        words = Set.copyOf(words);
    }

    /** What the cutter confirms. */
    public enum Word {
        /** A figure far off the plan is right. */
        SURE,
        /** The reel was counted after these cuts, though that count was booked before them. */
        CUT_BEFORE_THE_COUNT
    }

    /** Nothing but some measured lengths. */
    public static Found measured(Map<String, Length> lengths) {
        return new Found(lengths, Map.of(), Set.of(), Set.of(), "");
    }

    boolean isSure() {
        return words.contains(Word.SURE);
    }

    boolean isBeforeTheCount() {
        return words.contains(Word.CUT_BEFORE_THE_COUNT);
    }
}
