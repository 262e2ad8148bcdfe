package bitterend.exchange;

/**
 * The prices that a shop sets in {@code shop.json}, each as money or as minutes of labour. Defaults are minutes, so that
 * they mean the same in every currency: an opening of three minutes is worth one to two metres of common rope. Common
 * practice, no source.
 */
public enum RulePrice {
    OPENING("opening", 3, "per full reel opened", "unwrapping it, finding the end, trimming it, writing the label"),
    CHANGING("changing", 2, "per reel fetched", "walking to the rack, mounting the reel, putting it back"),
    HANDLING("handling", 2, "per run cut off and put aside", "coiling, tying and labelling it"),
    SPLIT_ORDER(
            "splitOrder",
            2,
            "per further lot of an order",
            "another colour tone next to the first, another paper to file"),
    MOVED_PIECE("movedPiece", 1, "per piece moved in a replan", "a sheet already on the bench is to be changed");

    private final String member;
    private final int minutes;
    private final String unit;
    private final String reason;

    RulePrice(String member, int minutes, String unit, String reason) {
        this.member = member;
        this.minutes = minutes;
        this.unit = unit;
        this.reason = reason;
    }

    /** Its name in the file. */
    public String member() {
        return member;
    }

    /** Minutes of labour when the shop states nothing. */
    public int minutes() {
        return minutes;
    }

    /** What it is paid for. */
    public String unit() {
        return unit;
    }

    /** Why it costs something. */
    public String reason() {
        return reason;
    }
}
