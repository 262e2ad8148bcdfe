package bitterend.finding;

/** Words that a spreadsheet would run as a formula instead of showing them, by how they begin. */
public final class Formula {
    /** The wide forms are typed on keyboards of East Asia. */
    private static final String RUNS = "=+-@\t\r\uff1d\uff0b\uff0d\uff20";

    private Formula() {}

    /** Whether a spreadsheet that opens a text with these words in a cell of their own would run them. */
    public static boolean isRun(String words) {
        return !words.isEmpty() && RUNS.indexOf(words.charAt(0)) >= 0;
    }

    /** The words without the {@code '} that was put in front of them. */
    public static String unmarked(String words) {
        return words.startsWith("'") && isRun(words.substring(1)) ? words.substring(1) : words;
    }

    /** The words, with a {@code '} in front where a spreadsheet would run them. */
    public static String marked(String words) {
        return isRun(words) ? "'" + words : words;
    }
}
