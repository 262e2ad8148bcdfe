package bitterend.report.page;

/**
 * A column of a table.
 *
 * @param title may hold a line feed; may be empty
 * @param kind how it is set
 */
public record Column(String title, Kind kind) {
    /** How a column is set. */
    public enum Kind {
        /** To the right, one line. */
        FIGURE,
        /** To the left, wrapped. */
        WORDS,
        /** As drawn; when a row takes more lines, the last line of a cell of several is repeated. */
        DRAWING;

        /** Its class in a style sheet. */
        public String style() {
            return switch (this) {
                case FIGURE -> "figure";
                case WORDS -> "words";
                case DRAWING -> "drawn";
            };
        }
    }

    public static Column figure(String title) {
        return new Column(title, Kind.FIGURE);
    }

    public static Column words(String title) {
        return new Column(title, Kind.WORDS);
    }

    public static Column drawing(String title) {
        return new Column(title, Kind.DRAWING);
    }
}
