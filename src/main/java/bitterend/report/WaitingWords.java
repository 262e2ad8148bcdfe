package bitterend.report;

import bitterend.packing.Horizon.Waiting;
import java.time.LocalDate;

/** Says what is not cut ahead while rope is short, and until when. */
public final class WaitingWords {
    private WaitingWords() {}

    /** One sentence about the pieces of a rope. */
    public static String of(Waiting waiting) {
        int pieces = waiting.pieces().size();
        return FindingsPage.count(pieces, "piece") + " of " + waiting.rope() + (pieces == 1 ? " is" : " are")
                + " not cut ahead: what is in the house is kept for what comes first " + until(waiting) + ".";
    }

    private static String until(Waiting waiting) {
        if (!waiting.order().isEmpty()) {
            return "until " + waiting.order() + ", counted on from " + waiting.until();
        }
        return "and none is on order"
                + (waiting.until().equals(LocalDate.MAX)
                        ? ""
                        : "; ordered today it is counted on from " + waiting.until());
    }
}
