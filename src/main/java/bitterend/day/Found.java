package bitterend.day;

import bitterend.measure.Length;
import java.util.Map;
import java.util.Set;

/**
 * What was found at the bench while a part of a plan was cut.
 *
 * @param measured length of pieces that did not come out as planned
 * @param left by reel, what was measured behind its last cut; nothing at all when the reel ended there
 * @param pieces what became of pieces otherwise than planned
 * @param words what the cutter confirms
 * @param scrapReason why rope was scrapped, where it was not for its length alone; may be empty
 */
public record Found(
        Map<String, Length> measured, Map<String, Length> left, Pieces pieces, Set<Word> words, String scrapReason) {
    /** All came out as planned. */
    public static final Found AS_PLANNED = new Found(Map.of(), Map.of(), Pieces.NONE, Set.of(), "");

    public Found {
        measured = Map.copyOf(measured);
        left = Map.copyOf(left);
        words = Set.copyOf(words);
    }

    /**
     * What became of pieces otherwise than planned.
     *
     * @param skipped those that were not cut off the reel they were planned on
     * @param wasCut those that were cut as planned, though they are not wanted like that any more
     */
    public record Pieces(Set<String> skipped, Set<String> wasCut) {
        public static final Pieces NONE = new Pieces(Set.of(), Set.of());

        public Pieces {
            skipped = Set.copyOf(skipped);
            wasCut = Set.copyOf(wasCut);
        }
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
        return new Found(lengths, Map.of(), Pieces.NONE, Set.of(), "");
    }

    boolean isSkipped(String piece) {
        return pieces.skipped().contains(piece);
    }

    /** Whether a piece was cut although nobody asks for it as it was planned. */
    public boolean wasCut(String piece) {
        return pieces.wasCut().contains(piece);
    }

    boolean isSure() {
        return words.contains(Word.SURE);
    }

    /** Whether the reels were counted after these cuts, though those counts are booked before them. */
    public boolean isBeforeTheCount() {
        return words.contains(Word.CUT_BEFORE_THE_COUNT);
    }
}
