package bitterend.exchange;

/**
 * The prices that a shop sets in {@code shop.json}, each as money or as minutes of labour. Defaults are minutes, so that
 * they mean the same in every currency: an opening of three minutes is worth one to two metres of common rope. Common
 * practice, no source.
 */
public enum RulePrice {
    OPENING("opening", 180, "per full reel opened", "unwrapping it, finding the end, trimming it, writing the label"),
    CHANGING("changing", 120, "per reel fetched", "walking to the rack, mounting the reel, putting it back"),
    HANDLING("handling", 120, "per run cut off and put aside", "coiling, tying and labelling it"),
    SPLIT_ORDER(
            "splitOrder",
            120,
            "per further lot of an order",
            "another colour tone next to the first, another paper to file"),
    MOVED_PIECE(
            "movedPiece", 30, "per piece moved in a replan", "what was looked out for it yesterday is to be changed");

    private final String member;
    private final int seconds;
    private final String unit;
    private final String reason;

    RulePrice(String member, int seconds, String unit, String reason) {
        this.member = member;
        this.seconds = seconds;
        this.unit = unit;
        this.reason = reason;
    }

    /** Its name in the file. */
    public String member() {
        return member;
    }

    /** Seconds of labour when the shop states nothing. */
    public int seconds() {
        return seconds;
    }

    /** The same as it is written in the file: {@code 3 min}, {@code 0.5 min}. */
    public String minutes() {
        int tenths = seconds / 6;
        return tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10) + " min";
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
