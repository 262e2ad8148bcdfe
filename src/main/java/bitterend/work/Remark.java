package bitterend.work;

/**
 * Something of a plan that is not as it was when the plan was made.
 *
 * @param reel the reel of the plan that it concerns; empty when it concerns none alone
 * @param sentence what changed
 * @param bars whether cuts of that reel may no longer be booked from this plan
 * @param isCount whether it is no more than a count of that reel, which may have come after the cuts
 */
public record Remark(String reel, String sentence, boolean bars, boolean isCount) {
    Remark(String reel, String sentence, boolean bars) {
        this(reel, sentence, bars, false);
    }

    static Remark told(String reel, String sentence) {
        return new Remark(reel, sentence, false);
    }

    static Remark barring(String reel, String sentence) {
        return new Remark(reel, sentence, true);
    }
}
