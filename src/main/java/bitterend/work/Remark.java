package bitterend.work;

import bitterend.measure.Sentence;
import java.util.List;
import java.util.stream.Stream;

/**
 * Something of a plan that is not as it was when the plan was made.
 *
 * @param reel the reel of the plan that it concerns; empty when it concerns none alone
 * @param piece the piece of that reel that it concerns; empty when it concerns all of the reel
 * @param sentence what changed
 * @param bars whether that piece, or any off that reel, may no longer be booked from this plan as it was planned
 * @param about what it is about
 */
public record Remark(String reel, String piece, Sentence sentence, boolean bars, About about) {

    /** What a remark is about, where the way out depends on it. */
    enum About {
        /** No more than a count of the reel, which may have come after the cuts. */
        COUNT,
        /** That the reel is on hold. */
        HOLD,
        /** How far the plan itself is booked off the reel. */
        POSTED,
        /** That the plan was made before the ledger was begun, which is so of all its reels. */
        BEFORE_LEDGER,
        ANYTHING
    }

    static Remark told(String reel, String sentence) {
        return new Remark(reel, "", Sentence.of(sentence), false, About.ANYTHING);
    }

    static Remark posted(String reel, String sentence) {
        return new Remark(reel, "", Sentence.of(sentence), false, About.POSTED);
    }

    static Remark barring(String reel, String sentence) {
        return barring(reel, "", Sentence.of(sentence));
    }

    static Remark barring(String reel, String piece, Sentence sentence) {
        return new Remark(reel, piece, sentence, true, About.ANYTHING);
    }

    public boolean isCount() {
        return about == About.COUNT;
    }

    public boolean isHold() {
        return about == About.HOLD;
    }

    /** Whether it only says how far the plan is cut: whoever sees that anyway needs not be told of a change. */
    public boolean isPosted() {
        return about == About.POSTED;
    }

    static Remark beforeLedger(String reel) {
        return new Remark(
                reel,
                "",
                Sentence.of("reel " + reel + ": the plan was not made with this ledger, which was begun after it"),
                true,
                About.BEFORE_LEDGER);
    }

    /**
     * The same for pages: what is so of every reel of the plan is told once, with what to do.
     *
     * @param shop the shop as a command names it
     */
    public static List<Remark> toldOnce(List<Remark> remarks, String shop) {
        List<Remark> others = remarks.stream()
                .filter(remark -> remark.about != About.BEFORE_LEDGER)
                .toList();
        Remark once = told(
                "",
                "the plan was made before the ledger was begun, and nothing can be posted off its reels; plan again:"
                        + " bitterend plan " + shop);
        return others.size() == remarks.size()
                ? others
                : Stream.concat(Stream.of(once), others.stream()).toList();
    }

    static Remark hold(String reel, Sentence sentence) {
        return new Remark(reel, "", sentence, true, About.HOLD);
    }

    /** Whether it keeps from booking what was cut of all of the reel. */
    public boolean barsTheReel() {
        return bars && piece.isEmpty();
    }
}
