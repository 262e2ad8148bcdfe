package bitterend.exchange.mapping;

import java.util.List;

/**
 * What becomes of one row in the file of the shop.
 *
 * @param place where it is in the sheet; empty for a row of the shop
 * @param name what it is called: order and line, reel, or rope
 * @param kind whether it is new
 * @param cells of a new row all that it says, of a changed one what changes
 */
public record Change(String place, String name, Kind kind, List<Cell> cells) {
    public Change {
        cells = List.copyOf(cells);
    }

    /** What becomes of a row. */
    public enum Kind {
        NEW("new"),
        CHANGED("changed"),
        SAME("same"),
        /** The example that a new shop begins with, which goes. */
        GONE("gone");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** For people and programs. */
        public String word() {
            return word;
        }
    }

    /** A member of a row before and after. */
    public record Cell(String member, String before, String after) {}

    /** A row that is not there yet. */
    public static Change of(Understood.Row row, String name) {
        return new Change(
                row.place(),
                name,
                Kind.NEW,
                row.members().entrySet().stream()
                        .map(each -> new Cell(each.getKey(), "", each.getValue()))
                        .toList());
    }

    /** Whether two texts of a file say the same, such as {@code 0.3 m} and {@code 300 mm}. */
    public static boolean isSame(String member, String one, String other) {
        return CellWords.isSame(member, one, other);
    }
}
