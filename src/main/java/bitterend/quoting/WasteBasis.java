package bitterend.quoting;

/** Three ways to look at the waste of a job; a shop charges by one of them. */
public enum WasteBasis {
    /** The job by itself on new reels of the sizes the shop buys. */
    ALONE("alone"),
    /** What the job adds to the work that is booked, on today's rack. */
    MARGINAL("marginal"),
    /** What the job would have added to the shop's usual weeks. */
    USUAL("usual");

    private final String word;

    WasteBasis(String word) {
        this.word = word;
    }

    /** The word used in files and on pages. */
    public String word() {
        return word;
    }
}
