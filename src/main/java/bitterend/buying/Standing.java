package bitterend.buying;

/** How a way to buy stands to the one that was chosen. */
public enum Standing {
    /** The cheapest in the scenarios that choose. */
    CHOSEN,
    /** The difference is within the error of chance: no more than a tie. */
    TIE,
    /** The difference is more than chance, but within the error of so few weeks: a tie until more are recorded. */
    TIE_OF_THIN_HISTORY,
    /** Dearer, beyond both errors. */
    DEARER
}
