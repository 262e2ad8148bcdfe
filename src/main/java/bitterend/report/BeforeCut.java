package bitterend.report;

/**
 * What is done to a rope at a mark before it is cut.
 *
 * @param brief for a row of the cutting table, such as {@code 3 seizings}
 * @param words in full, with count, width and spacing
 */
public record BeforeCut(String brief, String words) {
    static final BeforeCut NOTHING = new BeforeCut("", "");
}
