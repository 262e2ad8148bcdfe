package bitterend.report;

import bitterend.market.LeftOut;

/** Words on what can be had: one sentence for each reason, on every page that has it. */
final class BuyingWords {
    private BuyingWords() {}

    /** Why nobody can order an offer. */
    static String why(LeftOut leftOut) {
        return switch (leftOut.why()) {
            case JOINED -> "a reel may hold several lengths joined";
            case NO_LONGER_VALID -> "valid until " + leftOut.offer().terms().validUntil();
            case NOTHING_LEFT -> "nothing is left of it";
            case SUPPLY_BELOW_MINIMUM -> "fewer reels are left than its minimum";
        };
    }
}
